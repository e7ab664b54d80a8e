using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Stock;
using static SawEngine.Core.Tests.Nesting.Some;

namespace SawEngine.Core.Tests.Nesting;

/// <summary>Bars worked by hand; all agree to the nanometer.</summary>
public class LayoutPositionsTests
{
    private static readonly LayoutCost NoCredit = new(null, 0);

    [Fact]
    public void Sheared_bar_with_kerf_trim_and_tail_adds_up()
    {
        // Lead 10 (trim). 15 pieces of 245 with 14 kerfs of 1.5 end at 10 + 3675 + 21 = 3706. One more kerf: 3707.5. Left: 6000 - 3707.5 = 2292.5.
        var rules = new CutRules { Kerf = Mm(1.5m), Tail = Mm(80), Trim = new Dictionary<EndCondition, Length> { [EndCondition.Sheared] = Mm(10) } };
        var bar = Bar("R50-6M", 6000, 1) with { EndCondition = EndCondition.Sheared };

        var layout = LayoutPositions.Lay(bar, [.. Enumerable.Repeat(Line("10", 245, 15), 15)], rules, NoCredit)!;

        Assert.Equal(Mm(10), layout.Trim);
        Assert.Equal(Mm(256.5m), layout.Cuts[1].Start);
        Assert.Equal(Mm(3706), layout.Cuts[^1].End);
        Assert.Equal(Mm(22.5m), layout.KerfTotal);
        Assert.Equal(Mm(2292.5m), layout.Remainder.Length);
        AssertClean(bar, rules, layout);
    }

    [Fact]
    public void A_piece_that_would_leave_less_than_the_tail_does_not_fit()
    {
        // 24 pieces: 10 + 24 × 246.5 = 5926 and 74 are left, less than the tail of 80; 23 leave 320.5.
        var rules = new CutRules { Kerf = Mm(1.5m), Tail = Mm(80), Trim = new Dictionary<EndCondition, Length> { [EndCondition.Sheared] = Mm(10) } };
        var bar = Bar("R50-6M", 6000, 1) with { EndCondition = EndCondition.Sheared };

        Assert.Null(LayoutPositions.Lay(bar, [.. Enumerable.Repeat(Line("10", 245, 24), 24)], rules, NoCredit));
        Assert.Equal(Mm(320.5m), LayoutPositions.Lay(bar, [.. Enumerable.Repeat(Line("10", 245, 23), 23)], rules, NoCredit)!.Remainder.Length);
    }

    [Theory]
    // 4 × 1498.5 + 3 × 2 = 6000: the last piece ends with the bar and no fourth kerf is cut.
    [InlineData(1498.5, 6, 0)]
    // 4 × 1498.25 + 3 × 2 = 5999: the fourth kerf runs out of the bar after 1 mm.
    [InlineData(1498.25, 7, 0)]
    // 4 × 1497.5 + 3 × 2 = 5996: the fourth kerf is cut whole and 2 mm are left.
    [InlineData(1497.5, 8, 2)]
    public void Without_tail_the_last_kerf_may_run_out_of_the_bar(double length, double kerfTotal, double remainder)
    {
        var rules = new CutRules { Kerf = Mm(2) };
        var bar = Bar("B", 6000, 1);

        var layout = LayoutPositions.Lay(bar, [.. Enumerable.Repeat(Line("10", (decimal)length, 4), 4)], rules, NoCredit)!;

        Assert.Equal(Mm((decimal)kerfTotal), layout.KerfTotal);
        Assert.Equal(Mm((decimal)remainder), layout.Remainder.Length);
        AssertClean(bar, rules, layout);
    }

    [Fact]
    public void Without_tail_a_piece_stays_clear_of_a_raw_far_end()
    {
        // Raw at both ends: 6000 - 2 × 10 = 5980 between the trims. 4 × 1493.5 + 3 × 2 = 5980 fits, a millimeter more does not.
        var rules = new CutRules { Kerf = Mm(2), Trim = new Dictionary<EndCondition, Length> { [EndCondition.FlameCut] = Mm(10) } };
        var bar = Bar("B", 6000, 1) with { EndCondition = EndCondition.FlameCut };

        var layout = LayoutPositions.Lay(bar, [.. Enumerable.Repeat(Line("10", 1493.5m, 4), 4)], rules, NoCredit)!;

        Assert.Equal(Mm(5990), layout.Cuts[^1].End);
        Assert.Equal(Mm(8), layout.Remainder.Length);
        AssertClean(bar, rules, layout);
        Assert.Null(LayoutPositions.Lay(bar, [.. Enumerable.Repeat(Line("10", 1493.75m, 4), 4)], rules, NoCredit));
    }

    [Fact]
    public void Beam_with_a_30_degree_miter_at_its_end_adds_up()
    {
        // 10 + 6 × 1480 + 6 × 1.6 = 8899.6; + 2350 = 11249.6. The kerf along the bar is 1.6 / cos 30° = 1.84752, on the grid of 0.0127: 146 steps, 1.8542.
        // Left: 12000 - 11249.6 - 1.8542 = 748.5458. The centerline of the mitered piece is 50 tan 30° = 28.8675 shorter, on the grid 28.8798: 2321.1202.
        // Lost on it: 12000 - 10 - 6 × 1480 - 2321.1202 - 748.5458 = 40.334: six kerfs, the last kerf, and 28.8798 beside the remainder's short side.
        var beam = Rectangle.Of("IPE 200", 100, 200, 2848);
        var rules = new CutRules { Kerf = Mm(1.6m), Tail = Mm(120), Trim = new Dictionary<EndCondition, Length> { [EndCondition.Sheared] = Mm(10) } };
        var bar = Bar("IPE200-12M", 12000, 1) with { EndCondition = EndCondition.Sheared, Section = beam };
        var square = Line("10", 1480, 6) with { Section = beam };
        var mitered = Line("20", 2350, 1) with { Section = beam, SecondEnd = WidthMiter(30), LengthAt = LengthAt.LongSide };

        var layout = LayoutPositions.Lay(bar, [.. Enumerable.Repeat(square, 6), mitered], rules, NoCredit)!;

        Assert.Equal(Mm(8899.6m), layout.Cuts[6].Start);
        Assert.Equal(Mm(11249.6m), layout.Cuts[6].End);
        Assert.Equal(Mm(40.334m), layout.KerfTotal);
        Assert.Equal(Mm(748.5458m), layout.Remainder.Length);
        AssertClean(bar, rules, layout);
    }

    [Fact]
    public void Inch_bar_in_sixty_fourths_adds_up_in_nanometers()
    {
        // 5 × 47 53/64 in = 239.140625; 4 kerfs of 0.063 = 0.252: the last piece ends at 239.392625. Kerf: 239.455625.
        // Left of 240 in: 0.544375 in = 0.544375 × 25 400 000 nm = 13 827 125 nm.
        var rules = new CutRules { Kerf = In(0.063m), Tail = In(0.5m) };
        var bar = Bar("B", 1, 1) with { Length = In(240) };
        var line = Line("10", 1, 5) with { Length = In(47 + 53m / 64) };

        var layout = LayoutPositions.Lay(bar, [.. Enumerable.Repeat(line, 5)], rules, NoCredit)!;

        Assert.Equal(In(239.392625m), layout.Cuts[^1].End);
        Assert.Equal(In(0.315m), layout.KerfTotal);
        Assert.Equal(13_827_125, layout.Remainder.Length.Nanometers);
        AssertClean(bar, rules, layout);
    }

    [Fact]
    public void Remnant_with_a_mitered_first_end_pays_for_the_cut_of_that_end()
    {
        // 1.6 / cos 45° = 2.26274, on the grid 179 steps: 2.2733; with the thinnest slice of 2 the piece starts at 4.2733 and ends at 1004.2733.
        // + 1.6 = 1005.8733, + 500 = 1505.8733, + 1.6 = 1507.4733. Left: 3000 - 1507.4733 = 1492.5267. Lost: 4.2733 + 1.6 + 1.6 = 7.4733,
        // and on the centerline 50 tan 45° = 50 more, on the grid 3938 steps, 50.0126.
        var flat = Rectangle.Of("Flat 100x20", 100, 20, 2000);
        var rules = new CutRules { Kerf = Mm(1.6m), Tail = Mm(50), ThinnestSlice = Mm(2) };
        var remnant = Bar("RM-1", 3000, 1) with { Kind = StockKind.Remnant, Section = flat };
        var mitered = Line("10", 1000, 1) with { Section = flat, FirstEnd = WidthMiter(45) };

        var layout = LayoutPositions.Lay(remnant, [mitered, Line("20", 500, 1) with { Section = flat }], rules, NoCredit)!;

        Assert.Equal(Mm(4.2733m), layout.Cuts[0].Start);
        Assert.Equal(Mm(1005.8733m), layout.Cuts[1].Start);
        Assert.Equal(Mm(57.4859m), layout.KerfTotal);
        Assert.Equal(Mm(1492.5267m), layout.Remainder.Length);
        AssertClean(remnant, rules, layout);
    }

    [Fact]
    public void Wedge_between_two_miters_is_cut_twice_and_never_thinner_than_the_thinnest()
    {
        // Two kerfs of 1.8542 (30°, kerf 1.6) and a slice of 2: 5.7084 between the faces.
        var rules = new CutRules { Kerf = Mm(1.6m), ThinnestSlice = Mm(2) };

        Assert.Equal(Mm(5.7084m), LayoutPositions.Between(WidthMiter(30), WidthMiter(-30), Rectangle.Of("IPE 200", 100, 200, 2848), rules));
        Assert.Equal(Mm(1.6m), LayoutPositions.Between(EndCut.Square, EndCut.Square, null, rules));
    }

    private static void AssertClean(StockItem stock, CutRules rules, BarLayout layout)
    {
        var lines = layout.Cuts.GroupBy(cut => cut.Piece).Select(cuts => new OrderLine
        {
            Ref = cuts.Key,
            Section = stock.Section,
            Length = cuts.First().End - cuts.First().Start,
            Quantity = cuts.Count(),
            FirstEnd = cuts.First().StartCut,
            SecondEnd = cuts.First().EndCut,
        }).ToList();
        Assert.Empty(NestVerifier.VerifyLayout(new() { Lines = lines, Stock = [stock], Rules = rules }, layout));
    }

    [Theory]
    // Two pieces of 1000 with a kerf of 2: from 0 to 2002 and a kerf behind.
    [InlineData(2002, 3000, ZoneKind.Defective, 0)]
    [InlineData(2001, 2600, ZoneKind.Defective, 2600)]
    [InlineData(2001, 3500, ZoneKind.Defective, null)]
    [InlineData(2004, 3000, ZoneKind.Reserved, 0)]
    [InlineData(2003, 2004, ZoneKind.Reserved, null)]
    [InlineData(0, 500, ZoneKind.Reserved, null)]
    public void Bar_with_a_zone_is_used_before_it_or_behind_it_and_a_reserved_one_stays_whole(int from, int to, ZoneKind kind, int? start)
    {
        var bar = Bar("B", 5000, 1) with { Zones = [new(Mm(from), Mm(to), kind)] };
        var pieces = new[] { Line("10", 1000, 2), Line("10", 1000, 2) };

        var layout = LayoutPositions.Lay(bar, pieces, new() { Kerf = Mm(2) }, NoCredit);

        Assert.Equal(start is null ? null : Mm(start.Value), layout?.Cuts[0].Start);
        Assert.Equal(start is null ? null : Mm(start.Value), layout?.Trim);
        Assert.Equal(start is null ? null : Mm(5000 - 2004 - start.Value), layout?.Remainder.Length);
    }
}
