using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>An edited layout from wire to trade.</summary>
/// <param name="Json">As it is sent.</param>
/// <param name="IsKnown">Whether its stock is offered.</param>
/// <param name="Booked">With the trim, kerf and remainder that follow from the positions.</param>
/// <param name="Stated">The same with what the edit states of them.</param>
internal sealed record EditedLayout(EditedLayoutJson Json, bool IsKnown, BarLayout Booked, BarLayout Stated)
{
    /// <summary>
    /// Books cuts as they lie: the remainder is what is left behind the last one and its kerf, the trim ends before the first one, and all else is kerf. So nothing
    /// is wrong but the positions, which kerf below zero shows where pieces overlap.
    /// </summary>
    public static BarLayout Book(StockItem stock, int repeat, IReadOnlyList<Cut> cuts, IEnumerable<OrderLine> lines, CutRules rules, LayoutCost cost)
    {
        var trim = cuts.Count > 0 ? Length.Max(Length.Min(LayoutPositions.Lead(stock, EndCut.Square, rules), cuts[0].Start), Length.Zero) : Length.Zero;
        var left = cuts.Count > 0 ? stock.Length - cuts[^1].End - cuts[^1].EndCut.KerfAlongBar(rules.Kerf) : stock.Length;
        var layout = new BarLayout
        {
            Stock = stock,
            Repeat = repeat,
            Cuts = cuts,
            Trim = trim,
            TransferCostMicros = LayoutCost.TransferMicros(stock, lines),
            KerfTotal = Length.Zero,
            Remainder = RemainderOf(stock, Length.Max(left, Length.Zero), cost),
        };
        return layout with { KerfTotal = Rest(layout) };
    }

    /// <summary>What the bar has beside trim, pieces and remainder.</summary>
    public static Length Rest(BarLayout layout) => Length.FromNanometers(
        layout.Stock.Length.Nanometers - layout.Trim.Nanometers - layout.Remainder.Length.Nanometers - layout.Cuts.Sum(cut => cut.Centerline.Nanometers));

    /// <summary>What is left of a bar; nothing is known of stock without a length.</summary>
    public static Remainder RemainderOf(StockItem stock, Length length, LayoutCost cost) =>
        stock.Length > Length.Zero ? cost.RemainderOf(stock, length) : new(length, RemainderKind.Scrap, 0);
}
