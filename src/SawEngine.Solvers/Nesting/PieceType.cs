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
}
