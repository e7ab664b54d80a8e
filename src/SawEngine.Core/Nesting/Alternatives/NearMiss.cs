using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Nesting.Alternatives;

/// <summary>A small change of length, quantity or stock with which a nest of fewer bars was found, or one that leaves fewer pieces out.</summary>
public sealed record NearMiss
{
    /// <summary>What would have to change.</summary>
    public required NearMissChange Change { get; init; }

    /// <summary>The line; null where stock changes.</summary>
    public PieceRef? Piece { get; init; }

    /// <summary>The stock item; null where a line changes.</summary>
    public string? StockId { get; init; }

    /// <summary>By how much the pieces would be shorter; zero where something else changes.</summary>
    public Length ShorterBy { get; init; }

    /// <summary>How many pieces fewer; zero where something else changes.</summary>
    public int FewerBy { get; init; }

    /// <summary>Bars saved.</summary>
    public required long BarsSaved { get; init; }

    /// <summary>Cost saved, in millionths of the objective's unit.</summary>
    public required long CostSavedMicros { get; init; }

    /// <summary>Pieces placed that the nest leaves out.</summary>
    public required long MorePlaced { get; init; }
}
