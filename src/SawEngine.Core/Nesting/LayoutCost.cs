using SawEngine.Core.Quantities;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting;

/// <summary>
/// The one place that says what a layout costs: stock cost less the value of its remainder, in millionths of the objective's unit.
/// A remnant is worth the larger of its scrap value and <c>cost × valueFraction × length / bar length</c>. No remainder is credited with more than its length's
/// share of the bar's cost, else cutting up bars would seem to earn money. Values are rounded down to a whole millionth.
/// </summary>
/// <param name="Remnants">Remnant rule; null where nothing is kept or credited.</param>
/// <param name="ScrapValueMicrosPerKilogram">Value of a kilogram of scrap; 0 where scrap is not credited.</param>
public sealed record LayoutCost(RemnantRules? Remnants, long ScrapValueMicrosPerKilogram)
{
    /// <summary>The cost rules of a problem.</summary>
    public static LayoutCost Of(NestProblem problem) => new(problem.Remnants, problem.ScrapValueMicrosPerKilogram);

    /// <summary>What a remainder of a length is and is worth.</summary>
    public Remainder RemainderOf(StockItem stock, Length length)
    {
        var kind = Remnants is { } rules && length.Nanometers > 0 && length >= rules.KeepFrom ? RemainderKind.Remnant : RemainderKind.Scrap;
        var scrap = Math.Min(ScrapValueMicros(stock, length), ShareMicros(stock, length, 1m));
        var worth = kind == RemainderKind.Remnant ? Math.Max(scrap, ShareMicros(stock, length, Remnants!.ValueFraction)) : scrap;
        return new(length, kind, (long)decimal.Floor(worth));
    }

    /// <summary>Cost of one bar that leaves a remainder.</summary>
    public static long Micros(StockItem stock, Remainder remainder) => stock.CostMicros - remainder.ValueMicros;

    /// <summary>Cost of all bars of a layout.</summary>
    public static long Micros(BarLayout layout) => Micros(layout.Stock, layout.Remainder) * layout.Repeat;

    private static decimal ShareMicros(StockItem stock, Length length, decimal fraction) =>
        stock.CostMicros * fraction * length.Nanometers / stock.Length.Nanometers;

    private decimal ScrapValueMicros(StockItem stock, Length length) =>
        ScrapValueMicrosPerKilogram == 0 || stock.Section is null || stock.Grade is null
            ? 0m
            : ScrapValueMicrosPerKilogram * stock.Grade.Density.Value.MassOf(stock.Section.Area, length).Kilograms;
}
