using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using static SawEngine.Core.Tests.Nesting.Some;

namespace SawEngine.Core.Tests.Nesting;

public class StockMatchTests
{
    [Theory]
    // EN 10204:2004: 3.2 over 3.1 over 2.2 over 2.1; a mill test report is never equated with a type.
    [InlineData(Certificate.None, Certificate.None, true)]
    [InlineData(Certificate.None, Certificate.MillTestReport, true)]
    [InlineData(Certificate.Type21, Certificate.None, false)]
    [InlineData(Certificate.Type21, Certificate.Type22, true)]
    [InlineData(Certificate.Type22, Certificate.Type21, false)]
    [InlineData(Certificate.Type31, Certificate.Type31, true)]
    [InlineData(Certificate.Type31, Certificate.Type22, false)]
    [InlineData(Certificate.Type31, Certificate.MillTestReport, false)]
    [InlineData(Certificate.Type32, Certificate.Type31, false)]
    [InlineData(Certificate.MillTestReport, Certificate.MillTestReport, true)]
    [InlineData(Certificate.MillTestReport, Certificate.Type32, false)]
    public void Certificate_must_be_as_high_as_ordered(Certificate ordered, Certificate offered, bool suffices) =>
        Assert.Equal(suffices, StockMatch.Suffices(ordered, offered));

    [Theory]
    [InlineData(HeatRule.Any, Certificate.None, null, true)]
    [InlineData(HeatRule.Any, Certificate.Type21, null, false)]
    [InlineData(HeatRule.Any, Certificate.Type21, "H1", true)]
    [InlineData(HeatRule.Single, Certificate.None, null, false)]
    [InlineData(HeatRule.Single, Certificate.None, "H1", true)]
    [InlineData(HeatRule.Named, Certificate.None, null, false)]
    [InlineData(HeatRule.Named, Certificate.None, "H1", true)]
    [InlineData(HeatRule.Named, Certificate.None, "H2", false)]
    public void Heat_must_be_known_where_it_or_a_certificate_is_ordered(HeatRule rule, Certificate certificate, string? heat, bool serves)
    {
        var line = Line("10", 100, 1) with { HeatRule = rule, Certificate = certificate, Heat = rule == HeatRule.Named ? "H1" : null };

        Assert.Equal(serves, StockMatch.IsOfHeat(line, Bar("B", 6000, 1) with { Heat = heat, Certificate = Certificate.Type32 }));
    }

    [Fact]
    public void Section_and_grade_are_those_ordered()
    {
        var (beam, tube, steel) = (Rectangle.Of("IPE 200", 100, 200, 2848), Rectangle.Of("SHS 100", 100, 100, 1900), Steel("S355J2"));
        var line = Line("10", 100, 1) with { Section = beam, Grade = steel };
        var bar = Bar("B", 6000, 1) with { Section = beam, Grade = steel };

        Assert.True(StockMatch.Serves(line, bar));
        Assert.False(StockMatch.Serves(line, bar with { Section = tube }));
        Assert.False(StockMatch.Serves(line, bar with { Grade = Steel("S235JR") }));
    }

    [Fact]
    public void Substitute_is_a_grade_that_the_line_allows_in_the_same_section()
    {
        var (beam, tube) = (Rectangle.Of("IPE 200", 100, 200, 2848), Rectangle.Of("SHS 100", 100, 100, 1900));
        var line = Line("10", 100, 1) with { Section = beam, Grade = Steel("S235JR"), Substitutes = [Steel("S275JR"), Steel("S355J2")] };
        var bar = Bar("B", 6000, 1) with { Section = beam, Grade = Steel("S355J2") };

        Assert.True(StockMatch.Serves(line, bar));
        Assert.True(StockMatch.IsSubstitute(line, bar));
        Assert.True(StockMatch.Serves(line, bar with { Grade = Steel("S235JR") }));
        Assert.False(StockMatch.IsSubstitute(line, bar with { Grade = Steel("S235JR") }));
        Assert.False(StockMatch.Serves(line, bar with { Grade = Steel("C45") }));
        Assert.False(StockMatch.Serves(line, bar with { Section = tube }));
        Assert.False(StockMatch.Serves(line, bar with { Grade = null }));
        Assert.False(StockMatch.Serves(line with { Certificate = Certificate.Type31 }, bar));
        // What one line allows goes for that line alone, and not the other way about.
        Assert.False(StockMatch.Serves(line with { Grade = Steel("S355J2"), Substitutes = [] }, bar with { Grade = Steel("S235JR") }));
    }

    [Theory]
    [InlineData(null, null, true)]
    [InlineData(null, "C-1", true)]
    [InlineData("C-1", "C-1", true)]
    [InlineData("C-1", "C-2", false)]
    [InlineData("C-1", null, false)]
    public void Bar_of_a_customer_serves_that_customer_only(string? owner, string? customer, bool serves) =>
        Assert.Equal(serves, StockMatch.Serves(Line("10", 100, 1) with { Owner = customer }, Bar("B", 6000, 1) with { Owner = owner }));

    [Theory]
    [InlineData("north", "north", null, true)]
    [InlineData("north", null, null, true)]
    [InlineData(null, "south", null, true)]
    [InlineData("north", "south", null, false)]
    [InlineData("north", "south", 0L, true)]
    public void Bar_in_another_plant_serves_only_where_bringing_it_has_a_cost(string? there, string? needed, long? cost, bool serves) =>
        Assert.Equal(serves, StockMatch.Serves(Line("10", 100, 1) with { Plant = needed }, Bar("B", 6000, 1) with { Plant = there, ForeignPlantCostMicros = cost }));

    [Fact]
    public void Reserved_bar_serves_its_orders_only_or_its_pieces_where_there_are_no_orders()
    {
        var bar = Bar("B", 6000, 1) with { ReservedFor = ["SO-1", "10"] };

        Assert.True(StockMatch.Serves(Line("20", 100, 1) with { Ref = new("SO-1", "20") }, bar));
        Assert.False(StockMatch.Serves(Line("10", 100, 1) with { Ref = new("SO-2", "10") }, bar));
        Assert.True(StockMatch.Serves(Line("10", 100, 1), bar));
    }
}
