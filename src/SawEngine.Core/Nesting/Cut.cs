using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Nesting;

/// <summary>One piece on a bar, from its first to its last point along the bar. Pieces whose facing ends are inclined alike overlap along the bar.</summary>
/// <param name="Piece">The order line that it serves.</param>
/// <param name="Start">Distance of its first point from the bar's start.</param>
/// <param name="End">Distance of its last point from the bar's start; <c>End - Start</c> is the piece's overall length.</param>
/// <param name="StartCut">The face that comes first along the bar, as the piece lies.</param>
/// <param name="EndCut">The face that comes last.</param>
/// <param name="Turn">How the piece is turned against the order.</param>
/// <param name="Centerline">What it takes of the bar's centerline, by which it is booked; <c>End - Start</c> where both faces are square.</param>
public sealed record Cut(PieceRef Piece, Length Start, Length End, EndCut StartCut, EndCut EndCut, PieceTurn Turn, Length Centerline);
