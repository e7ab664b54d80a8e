using SawEngine.Core.Orders;

namespace SawEngine.Core.Nesting;

/// <summary>One piece of a line, in the turn in which it is laid on a bar.</summary>
/// <param name="Line">Its order line.</param>
/// <param name="Turn">How it is turned.</param>
public readonly record struct PlacedPiece(OrderLine Line, PieceTurn Turn = PieceTurn.None);
