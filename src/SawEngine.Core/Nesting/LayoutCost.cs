using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting;

/// <summary>
/// The one place that says what a layout costs, in millionths of the objective's unit: the bar, pulling it from its place, bringing it to another plant where a piece is for one, and each pass of the blade
/// (see <see cref="CutCount"/>), less the value of its remainder.
/// <para>
/// A remnant is worth <c>cost × valueFraction × length / bar length</c> less its handling, with the fraction of its length class. It is never worth less than a
/// shorter one, to which it could be cut down, nor less than its scrap. So the value never falls as the remainder grows, and a layout from which a piece is left
/// out never costs more. No remainder is credited with more than its length's share of the bar's cost, else cutting up bars would seem to earn money. Values are
/// rounded down to a whole millionth. A remainder with a reserved zone is put back whatever its length; zones count like the rest of it.
/// </para>
/// </summary>
/// <param name="Remnants">Remnant rule; null where nothing is kept or credited.</param>
/// <param name="ScrapValueMicrosPerKilogram">Value of a kilogram of scrap; 0 where scrap is not credited.</param>
public sealed record LayoutCost(RemnantRules? Remnants, long ScrapValueMicrosPerKilogram)
{
    /// <summary>Cost of each pass of the blade.</summary>
    public long CostPerCutMicros { get; init; }

    /// <summary>Kerf, from which follows whether two pieces share a pass.</summary>
    public Length Kerf { get; init; }

    /// <summary>The cost rules of a problem.</summary>
    public static LayoutCost Of(NestProblem problem) =>
        new(problem.Remnants, problem.ScrapValueMicrosPerKilogram) { CostPerCutMicros = problem.CostPerCutMicros, Kerf = problem.Rules.Kerf };

    /// <summary>What a remainder of a length is and is worth, were there no limit on remnants.</summary>
    public Remainder RemainderOf(StockItem stock, Length length)
    {
        var scrap = ScrapOf(stock, length);
        return IsKept(length) ? new(length, RemainderKind.Remnant, Math.Max(scrap.ValueMicros, RemnantMicros(stock, length)))
            : stock.HasReservedZone ? scrap with { Kind = RemainderKind.Remnant }
            : scrap;
    }

    /// <summary>A remainder as scrap, whatever its length.</summary>
    public Remainder ScrapOf(StockItem stock, Length length) =>
        new(length, RemainderKind.Scrap, (long)decimal.Floor(Math.Min(ScrapValueMicros(stock, length), ShareMicros(stock, length, 1m))));

    /// <summary>Whether a remainder is long enough to be kept.</summary>
    public bool IsKept(Length length) => Remnants is { } rules && length > Length.Zero && length >= rules.KeepFrom;

    /// <summary>What one bar costs that leaves a remainder, before any pass of the blade.</summary>
    public static long Micros(StockItem stock, Remainder remainder) => stock.CostMicros + stock.PullCostMicros - remainder.ValueMicros;

    /// <summary>Cost of all bars of a layout; a pass of the blade through a cut bundle is one.</summary>
    public long Micros(BarLayout layout) =>
        (Micros(layout.Stock, layout.Remainder) + layout.TransferCostMicros) * layout.Repeat
        + (CostPerCutMicros == 0 ? 0 : CostPerCutMicros * CutCount.Of(layout, Kerf) * layout.Cycles);

    /// <summary>What bringing a bar to another plant costs where any of its pieces is for one.</summary>
    public static long TransferMicros(StockItem stock, IEnumerable<OrderLine> pieces) =>
        stock.ForeignPlantCostMicros is { } cost && pieces.Any(line => StockMatch.IsForeign(line, stock)) ? cost : 0;

    /// <summary>What all bars of a layout consume of the stock's cost: neither pulling, bringing nor cutting is in it.</summary>
    public static long MaterialMicros(BarLayout layout) => (layout.Stock.CostMicros - layout.Remainder.ValueMicros) * layout.Repeat;

    /// <summary>The most that any class reached gives, each at no more than the length at which the next begins.</summary>
    private long RemnantMicros(StockItem stock, Length length)
    {
        var classes = Remnants!.Classes;
        var worth = long.MinValue;
        for (var i = -1; i < classes.Count && (i < 0 || length >= classes[i].From); i++)
        {
            var upTo = i + 1 < classes.Count ? Length.Min(length, classes[i + 1].From) : length;
            var share = ShareMicros(stock, upTo, i < 0 ? Remnants.ValueFraction : classes[i].ValueFraction);
            worth = Math.Max(worth, (long)decimal.Floor(share) - Remnants.HandlingCostMicros);
        }
        return worth;
    }

    private static decimal ShareMicros(StockItem stock, Length length, decimal fraction) =>
        stock.CostMicros * fraction * length.Nanometers / stock.Length.Nanometers;

    private decimal ScrapValueMicros(StockItem stock, Length length) =>
        ScrapValueMicrosPerKilogram == 0 || stock.Section is null || stock.Grade is null
            ? 0m
            : ScrapValueMicrosPerKilogram * stock.Grade.Density.Value.MassOf(stock.Section.Area, length).Kilograms;
}
