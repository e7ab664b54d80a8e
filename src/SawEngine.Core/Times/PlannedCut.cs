using SawEngine.Core.Quantities;

namespace SawEngine.Core.Times;

/// <summary>One cut of a bar, or cut bundle, as it takes time.</summary>
/// <param name="Feed">How far the bar moves on from the last cut: piece length and kerf along the bar, or the trim; zero where it stands.</param>
/// <param name="CutSeconds">Time the blade is in the work, from the cutting data.</param>
/// <param name="Swivel">Angle of the cut in the plane that the saw swivels in.</param>
/// <param name="Pieces">Pieces that come off: one of each bar, or none at a trim cut or a wedge.</param>
public sealed record PlannedCut(Length Feed, decimal CutSeconds, Angle Swivel, int Pieces);
