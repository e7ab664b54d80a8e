using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Nesting;

/// <summary>One piece on a bar, from its first to its last point along the bar.</summary>
/// <param name="Piece">The order line that it serves.</param>
/// <param name="Start">Distance of its first point from the bar's start.</param>
/// <param name="End">Distance of its last point from the bar's start; <c>End - Start</c> is the piece's overall length.</param>
/// <param name="StartCut">Its first face.</param>
/// <param name="EndCut">Its second face.</param>
public sealed record Cut(PieceRef Piece, Length Start, Length End, EndCut StartCut, EndCut EndCut);
