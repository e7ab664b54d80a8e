using SawEngine.Core.Orders;

namespace SawEngine.Solvers.Nesting;

/// <summary>A way in which pieces may lie on a bar.</summary>
/// <param name="Turn">How they are turned against the order.</param>
/// <param name="FirstFace">The face that comes first.</param>
/// <param name="SecondFace">The face that comes last.</param>
/// <param name="Lays">The lays in which both can be cut, as bits.</param>
internal readonly record struct PieceWay(PieceTurn Turn, int FirstFace, int SecondFace, int Lays);
