using SawEngine.Core.Sections;

namespace SawEngine.Core.Tests.Sections;

/// <summary>Every mass and area printed for a section of the catalog, against what its dimensions give. Sources stand in the catalog, row by row.</summary>
public sealed class PublishedValuesTests
{
    private const decimal Allowed = 0.005m;

    private const string DesignWallArea = "the printed structural area does not follow from the printed design wall; the mass agrees";
    private const string FilletLeftOut = "the printed area counts a fillet whose radius is not printed; legs alone are t(a + b - t)";

    /// <summary>Printed values that the dimensions printed beside them do not give.</summary>
    private static readonly Dictionary<(string Designation, string Value), string> s_exceptions = new()
    {
        [("W36X150", "mass")] = "a designation weight, rounded; the area agrees",
        [("L2X2X1/4", "area")] = FilletLeftOut,
        [("L8X8X1", "area")] = FilletLeftOut,
        [("L5X3X3/8", "mass")] = "the printed mass contradicts the printed area, which agrees",
        [("Pipe1STD", "area")] = DesignWallArea,
        [("Pipe2STD", "area")] = DesignWallArea,
        [("Pipe3STD", "area")] = DesignWallArea,
        [("Pipe10STD", "area")] = DesignWallArea,
        [("Pipe12STD", "area")] = DesignWallArea,
    };

    public static TheoryData<string, string> Agreeing => Values(exceptions: false);

    public static TheoryData<string, string> Excepted => Values(exceptions: true);

    [Theory]
    [MemberData(nameof(Agreeing))]
    public void Printed_value_is_reproduced_within_half_a_percent(string designation, string value) =>
        Assert.InRange(Deviation(designation, value), -Allowed, Allowed);

    [Theory]
    [MemberData(nameof(Excepted))]
    public void Exception_is_needed(string designation, string value) =>
        Assert.NotInRange(Deviation(designation, value), -Allowed, Allowed);

    [Fact]
    public void Every_exception_is_a_printed_value() => Assert.Equal(s_exceptions.Count, Excepted.Count);

    [Fact]
    public void All_123_listed_sections_have_a_printed_mass_and_91_an_area()
    {
        Assert.Equal(123, SectionCatalog.Standard.Items.Count);
        Assert.All(SectionCatalog.Standard.Items, i => Assert.True(i.Published!.MassPerMeter.Kilograms > 0));
        Assert.Equal(91, SectionCatalog.Standard.Items.Count(i => i.Published!.Area is not null));
    }

    [Fact]
    public void Every_section_reproduces_its_mass_or_its_area() =>
        Assert.All(SectionCatalog.Standard.Items, i => Assert.True(
            !s_exceptions.ContainsKey((i.Section.Designation, "mass"))
            || (i.Published!.Area is not null && !s_exceptions.ContainsKey((i.Section.Designation, "area")))));

    private static TheoryData<string, string> Values(bool exceptions)
    {
        var values = new TheoryData<string, string>();
        foreach (var item in SectionCatalog.Standard.Items)
        {
            foreach (var value in (string[])(item.Published!.Area is null ? ["mass"] : ["mass", "area"]))
            {
                if (s_exceptions.ContainsKey((item.Section.Designation, value)) == exceptions)
                    values.Add(item.Section.Designation, value);
            }
        }
        return values;
    }

    private static decimal Deviation(string designation, string value)
    {
        var item = SectionCatalog.Standard.FindItem(designation)!;
        var published = item.Published!;
        return value == "mass"
            ? item.Section.MassPerMeter(published.Density).Kilograms / published.MassPerMeter.Kilograms - 1
            : ForArea(item).Area.SquareMillimeters / published.Area!.Value.SquareMillimeters - 1;
    }

    /// <summary>The section on the wall that the area was printed for; AISC tabulates with corner radii of 2t and t.</summary>
    private static Section ForArea(CatalogSection item)
    {
        if (item.Published!.AreaWall is not { } wall)
            return item.Section;
        var hasRadii = item.Dimensions.OuterRadius is not null;
        return SectionProfileTests.Make(item.Dimensions with { Wall = wall, OuterRadius = hasRadii ? 2 * wall : null, InnerRadius = hasRadii ? wall : null });
    }
}
