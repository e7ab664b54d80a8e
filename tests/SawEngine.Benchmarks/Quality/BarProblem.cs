using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Stock;

namespace SawEngine.Benchmarks.Quality;

/// <summary>A cutting-stock problem of lengths alone, as the literature states it. Each piece takes its length and a kerf; each bar gives its length less the tail.</summary>
/// <param name="Kerf">Kerf in nanometers.</param>
/// <param name="Tail">What must be left of each bar, in nanometers.</param>
/// <param name="Bars">What is offered.</param>
/// <param name="Pieces">What is wanted.</param>
internal sealed record BarProblem(long Kerf, long Tail, IReadOnlyList<OfferedBar> Bars, IReadOnlyList<WantedPiece> Pieces)
{
    /// <summary>One unit of the sets of the literature.</summary>
    public const long Unit = Length.NanometersPerMillimeter;

    /// <summary>Cost of one bar where bars are counted.</summary>
    public const long OneBar = 1_000_000;

    /// <summary>Fewest bars of one length.</summary>
    public static BarProblem FewestBars(int capacity, IEnumerable<int> lengths) => new(
        0,
        0,
        [new(StockKind.Purchasable, capacity * Unit, null, OneBar)],
        [.. lengths.CountBy(length => length).OrderByDescending(group => group.Key).Select(group => new WantedPiece(group.Key * Unit, group.Value))]);

    /// <summary>The problem as the engine takes it.</summary>
    public NestProblem ToNestProblem() => new()
    {
        Lines = [.. Pieces.Select((piece, i) => new OrderLine { Ref = RefOf(i), Length = new(piece.Length), Quantity = piece.Demand })],
        Stock = [.. Bars.Select((bar, i) => new StockItem { StockId = StockIdOf(i), Kind = bar.Kind, Length = new(bar.Length), Quantity = bar.Available, CostMicros = bar.CostMicros })],
        Rules = new() { Kerf = new(Kerf), Tail = new(Tail) },
    };

    /// <summary>The line of a piece by its place in the list.</summary>
    public static PieceRef RefOf(int place) => new("", $"P{place:00000}");

    /// <summary>The stock item of a bar by its place in the list.</summary>
    public static string StockIdOf(int place) => $"B{place:00000}";
}
