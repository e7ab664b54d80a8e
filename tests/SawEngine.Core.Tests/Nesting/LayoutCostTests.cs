using SawEngine.Core.Nesting;
using SawEngine.Core.Quantities;
using SawEngine.Core.Stock;
using static SawEngine.Core.Tests.Nesting.Some;

namespace SawEngine.Core.Tests.Nesting;

public class LayoutCostTests
{
    [Fact]
    public void Remnant_is_worth_its_share_of_the_bar_times_the_fraction()
    {
        // 148.00 × 0.8 × 2292.5 / 6000 = 45.2386666..., rounded down to the millionth.
        var cost = new LayoutCost(new(Mm(600), 0.8m), 0);
        var bar = Bar("B", 6000, 1) with { CostMicros = 148_000_000 };

        Assert.Equal(new(Mm(2292.5m), RemainderKind.Remnant, 45_238_666), cost.RemainderOf(bar, Mm(2292.5m)));
    }

    [Fact]
    public void Remainder_is_kept_from_the_shortest_kept_length_on()
    {
        var cost = new LayoutCost(new(Mm(600), 0.8m), 0);
        var bar = Bar("B", 6000, 1);

        Assert.Equal(RemainderKind.Remnant, cost.RemainderOf(bar, Mm(600)).Kind);
        Assert.Equal(RemainderKind.Scrap, cost.RemainderOf(bar, Mm(599.999999m)).Kind);
        Assert.Equal(0, cost.RemainderOf(bar, Mm(599.999999m)).ValueMicros);
    }

    [Fact]
    public void Nothing_left_is_scrap_even_where_all_is_kept() =>
        Assert.Equal(RemainderKind.Scrap, new LayoutCost(new(Mm(0), 1m), 0).RemainderOf(Bar("B", 6000, 1), Mm(0)).Kind);

    [Fact]
    public void Scrap_is_credited_by_weight()
    {
        // 2848 mm2 × 584.28 mm × 7850 kg/m3 = 13.062631... kg; × 0.20 = 2.612526...
        var cost = new LayoutCost(new(Mm(600), 0.8m), 200_000);
        var bar = Bar("B", 5230, 1) with { Section = Rectangle.Of("IPE 200", 100, 200, 2848), Grade = Steel("S355J2"), CostMicros = 98_300_000 };

        Assert.Equal(2_612_526, cost.RemainderOf(bar, Mm(584.28m)).ValueMicros);
    }

    [Fact]
    public void Scrap_is_never_credited_with_more_than_its_share_of_the_bar()
    {
        // 98.30 × 584.28 / 5230 = 10.981782...; by weight at 100 000 a kilogram it would be more than a million.
        var cost = new LayoutCost(new(Mm(500), 0.8m), 100_000_000_000);
        var bar = Bar("B", 5230, 1) with { Section = Rectangle.Of("IPE 200", 100, 200, 2848), Grade = Steel("S355J2"), CostMicros = 98_300_000 };

        Assert.Equal(10_981_782, cost.RemainderOf(bar, Mm(584.28m)).ValueMicros);
        Assert.Equal(0, cost.RemainderOf(bar with { CostMicros = 0 }, Mm(584.28m)).ValueMicros);
    }

    [Fact]
    public void Remnant_is_worth_the_fraction_of_its_class_less_its_handling()
    {
        // 120 × 0.5 × 1000 / 6000 − 2 = 8; 120 × 0.9 × 3000 / 6000 − 2 = 52.
        var cost = new LayoutCost(new(Mm(600), 0.5m) { Classes = [new(Mm(2000), 0.9m)], HandlingCostMicros = 2_000_000 }, 0);
        var bar = Bar("B", 6000, 1) with { CostMicros = 120_000_000 };

        Assert.Equal(8_000_000, cost.RemainderOf(bar, Mm(1000)).ValueMicros);
        Assert.Equal(52_000_000, cost.RemainderOf(bar, Mm(3000)).ValueMicros);
    }

    [Fact]
    public void Remnant_that_is_not_worth_its_handling_is_worth_its_scrap()
    {
        var cost = new LayoutCost(new(Mm(600), 0.5m) { HandlingCostMicros = 20_000_000 }, 0);

        Assert.Equal(new(Mm(1000), RemainderKind.Remnant, 0), cost.RemainderOf(Bar("B", 6000, 1) with { CostMicros = 120_000_000 }, Mm(1000)));
    }

    [Fact]
    public void Longer_remainder_is_never_worth_less()
    {
        // From 2000 on the fraction is lower; 120 × 0.9 × 2000 / 6000 = 36 holds until 120 × 0.3 × 6000 / 6000 = 36.
        var cost = new LayoutCost(new(Mm(600), 0.9m) { Classes = [new(Mm(2000), 0.3m)] }, 200_000);
        var bar = Bar("B", 6000, 1) with { CostMicros = 120_000_000 };
        var values = Enumerable.Range(0, 601).Select(i => cost.RemainderOf(bar, Mm(i * 10)).ValueMicros).ToList();

        Assert.Equal(values.Order(), values);
        Assert.Equal(36_000_000, cost.RemainderOf(bar, Mm(2000)).ValueMicros);
        Assert.Equal(36_000_000, cost.RemainderOf(bar, Mm(5999)).ValueMicros);
    }

    [Fact]
    public void Pulling_and_every_pass_of_the_blade_count()
    {
        var problem = new NestProblem
        {
            Lines = [Line("10", 1000, 9)],
            Stock = [],
            Rules = new() { Kerf = Mm(2), Trim = new Dictionary<EndCondition, Length> { [EndCondition.Sheared] = Mm(10) } },
            CostPerCutMicros = 3_000_000,
        };
        var cost = LayoutCost.Of(problem);
        var bar = Bar("B", 3004, 1) with { CostMicros = 100_000_000, PullCostMicros = 7_000_000 };
        BarLayout Laid(StockItem stock, int pieces) => LayoutPositions.Lay(stock, [.. Enumerable.Repeat(problem.Lines[0], pieces)], problem.Rules, cost)!;

        // The third piece ends with the bar: two passes; of two pieces each has one behind it.
        Assert.Equal(113_000_000, cost.Micros(Laid(bar, 3)));
        Assert.Equal(113_000_000, cost.Micros(Laid(bar, 2)));
        // A kerf that runs partly out of the bar is a pass; a raw start takes one of its own.
        Assert.Equal(116_000_000, cost.Micros(Laid(bar with { Length = Mm(3005) }, 3)));
        Assert.Equal(116_000_000, cost.Micros(Laid(bar with { EndCondition = EndCondition.Sheared }, 2)));
        Assert.Equal(2 * 113_000_000, cost.Micros(Laid(bar, 3) with { Repeat = 2 }));
    }

    [Fact]
    public void Mitered_faces_take_a_pass_each()
    {
        var miter = Line("10", 500, 2) with { Section = Rectangle.Of("IPE 200", 100, 200, 2848), FirstEnd = WidthMiter(30), SecondEnd = WidthMiter(-30) };
        var rules = new CutRules { Kerf = Mm(2), ThinnestSlice = Mm(3) };
        var layout = LayoutPositions.Lay(Bar("B", 6000, 1) with { Section = miter.Section }, [miter, miter], rules, new(null, 0))!;

        Assert.Equal(4, CutCount.Of(layout, rules.Kerf));
    }

    [Fact]
    public void Beyond_the_limit_the_remnants_of_least_gain_are_scrap()
    {
        var cost = new LayoutCost(new(Mm(600), 0.5m) { MostNew = 2 }, 0);
        BarLayout Left(string stockId, decimal remainder, int repeat)
        {
            var bar = Bar(stockId, 6000, repeat);
            return new() { Stock = bar, Repeat = repeat, Cuts = [], Trim = Mm(0), KerfTotal = Mm(0), Remainder = cost.RemainderOf(bar, Mm(remainder)) };
        }

        var limited = RemnantLimit.Apply([Left("A", 700, 1), Left("B", 900, 3), Left("C", 100, 1)], cost);

        Assert.Equal(
            [("A", 1, RemainderKind.Scrap, 0L), ("B", 2, RemainderKind.Remnant, Mm(450).Nanometers), ("B", 1, RemainderKind.Scrap, 0L), ("C", 1, RemainderKind.Scrap, 0L)],
            limited.Select(layout => (layout.Stock.StockId, layout.Repeat, layout.Remainder.Kind, layout.Remainder.ValueMicros)));
        Assert.Equal(2, RemnantLimit.NewRemnants(limited));
    }

    [Fact]
    public void Cost_of_a_layout_counts_every_bar()
    {
        var bar = Bar("B", 6000, 3);
        var layout = new BarLayout
        {
            Stock = bar,
            Repeat = 3,
            Cuts = [],
            Trim = Mm(0),
            KerfTotal = Mm(0),
            Remainder = new(Mm(1000), RemainderKind.Remnant, Mm(800).Nanometers),
        };

        Assert.Equal(3 * Mm(5200).Nanometers, new LayoutCost(null, 0).Micros(layout));
    }
}
