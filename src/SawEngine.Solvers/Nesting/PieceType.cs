using SawEngine.Core.Orders;

namespace SawEngine.Solvers.Nesting;

/// <summary>Pieces that are alike for nesting, of one or several lines.</summary>
internal sealed class PieceType
{
    /// <summary>Overall length in nanometers.</summary>
    public required long Overall { get; init; }

    public required int FirstFace { get; init; }

    public required int SecondFace { get; init; }

    /// <summary>The lays in which both its faces can be cut, as bits.</summary>
    public required int Lays { get; init; }

    /// <summary>Index of the need.</summary>
    public required int Need { get; init; }

    /// <summary>The lines with the pieces wanted of each, the most urgent first.</summary>
    public List<(OrderLine Line, int Quantity)> Lines { get; } = [];

    public int Demand { get; set; }

    /// <summary>The same type with fewer pieces of each line.</summary>
    public PieceType For(IReadOnlyDictionary<PieceRef, int> quantities)
    {
        var type = new PieceType { Overall = Overall, FirstFace = FirstFace, SecondFace = SecondFace, Lays = Lays, Need = Need };
        foreach (var (line, quantity) in Lines.Select(one => (one.Line, Math.Min(one.Quantity, quantities.GetValueOrDefault(one.Line.Ref)))))
        {
            if (quantity == 0)
                continue;
            type.Lines.Add((line, quantity));
            type.Demand += quantity;
        }
        return type;
    }
}
