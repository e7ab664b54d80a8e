using SawEngine.Core.Orders;

namespace SawEngine.Core.Nesting;

/// <summary>Pieces of a line that are not in the nest, and why.</summary>
/// <param name="Piece">The order line.</param>
/// <param name="Quantity">How many.</param>
/// <param name="Reason">A code of the published list (see <see cref="UnplacedReason"/>).</param>
public sealed record UnplacedPieces(PieceRef Piece, int Quantity, string Reason);
