using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting;

/// <summary>
/// Pieces to be cut from stock under one set of rules. All lines and stock items share section and grade, or the rules of substitution let them meet.
/// Lists are in canonical order: lines by <see cref="OrderLine.Ref"/>, stock by id, ordinal.
/// </summary>
public sealed record NestProblem
{
    /// <summary>What is wanted.</summary>
    public required IReadOnlyList<OrderLine> Lines { get; init; }

    /// <summary>What it may be cut from.</summary>
    public required IReadOnlyList<StockItem> Stock { get; init; }

    /// <summary>The saw's rules.</summary>
    public required CutRules Rules { get; init; }

    /// <summary>Remnant rule; null where nothing is kept or credited.</summary>
    public RemnantRules? Remnants { get; init; }

    /// <summary>Value of a kilogram of scrap in millionths of the currency; 0 where scrap is not credited.</summary>
    public long ScrapValueMicrosPerKilogram { get; init; }

    /// <summary>Cost of each pass of the blade in millionths of the objective's unit.</summary>
    public long CostPerCutMicros { get; init; }

    /// <summary>Due date by order id, for the order among equal pieces; orders not listed come last.</summary>
    public IReadOnlyDictionary<string, DateTimeOffset> Due { get; init; } = new Dictionary<string, DateTimeOffset>();
}
