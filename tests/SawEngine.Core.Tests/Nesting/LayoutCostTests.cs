using SawEngine.Core.Nesting;
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

        Assert.Equal(3 * Mm(5200).Nanometers, LayoutCost.Micros(layout));
    }
}
