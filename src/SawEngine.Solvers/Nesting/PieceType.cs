using SawEngine.Core.Orders;

namespace SawEngine.Solvers.Nesting;

/// <summary>Pieces that are alike for nesting, of one or several lines.</summary>
internal sealed class PieceType
{
    /// <summary>Overall length in nanometers.</summary>
    public required long Overall { get; init; }

    /// <summary>The ways in which its pieces may lie, as ordered first.</summary>
    public required PieceWay[] Ways
    {
        get;
        init
        {
            field = value;
            Lays = value.Aggregate(0, (lays, way) => lays | way.Lays);
        }
    }

    /// <summary>The first face as ordered.</summary>
    public int FirstFace => Ways[0].FirstFace;

    /// <summary>The second face as ordered.</summary>
    public int SecondFace => Ways[0].SecondFace;

    /// <summary>Whether any face is not square.</summary>
    public bool IsMitered => FirstFace != 0 || SecondFace != 0;

    /// <summary>The lays in which both faces can be cut, in one way or another, as bits.</summary>
    public int Lays { get; private init; }

    /// <summary>Index of the need.</summary>
    public required int Need { get; init; }

    /// <summary>The lines with the pieces wanted of each, the most urgent first.</summary>
    public List<(OrderLine Line, int Quantity)> Lines { get; } = [];

    public int Demand { get; set; }

    /// <summary>The same type with fewer pieces of each line.</summary>
    public PieceType For(IReadOnlyDictionary<PieceRef, int> quantities)
    {
        var type = new PieceType { Overall = Overall, Ways = Ways, Need = Need };
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
