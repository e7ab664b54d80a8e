using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Times;

/// <summary>One cut of a bar, or cut bundle, as it takes time.</summary>
/// <param name="Feed">How far the bar moves on from the last cut: piece length and kerf along the bar, or the trim; zero where it stands.</param>
/// <param name="CutSeconds">Time the blade is in the work, from the cutting data.</param>
/// <param name="Face">The face that the cut makes, as the bar lies.</param>
/// <param name="Pieces">Pieces that come off: one of each bar, or none at a trim cut or a wedge.</param>
public sealed record PlannedCut(Length Feed, decimal CutSeconds, EndCut Face, int Pieces);
