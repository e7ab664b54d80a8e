using SawEngine.Core.Orders;

namespace SawEngine.Core.Nesting;

/// <summary>Pieces of a line that are not in the nest, and why.</summary>
/// <param name="Piece">The order line.</param>
/// <param name="Quantity">How many.</param>
/// <param name="Reason">A code of the published list (see <see cref="UnplacedReason"/>).</param>
public sealed record UnplacedPieces(PieceRef Piece, int Quantity, string Reason)
{
    /// <summary>Whether the line counts as placed all the same.</summary>
    public bool IsAccepted => Reason == UnplacedReason.UnderAccepted;

    /// <summary>The row of a line: accepted where it is no more than the line accepts to be under, else for the reason.</summary>
    public static UnplacedPieces Of(OrderLine line, int quantity, string reason) =>
        new(line.Ref, quantity, quantity <= line.Under ? UnplacedReason.UnderAccepted : reason);
}
