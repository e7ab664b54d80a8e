using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Tests.Sections;

public sealed class SectionCatalogTests
{
    private static readonly SectionCatalog s_catalog = SectionCatalog.Standard;

    [Fact]
    public void Every_listed_designation_and_alias_finds_its_section()
    {
        foreach (var item in s_catalog.Items)
        {
            Assert.Same(item, s_catalog.FindItem(item.Section.Designation));
            Assert.All(item.Aliases, alias => Assert.Same(item, s_catalog.FindItem(alias)));
        }
    }

    [Fact]
    public void Every_listed_section_has_a_source_and_a_confidence()
    {
        Assert.All(s_catalog.Items, i => Assert.NotEqual("", i.Section.Source));
        Assert.All(s_catalog.Items, i => Assert.True(i.Section.Confidence is Confidence.Secondary or Confidence.FromMemory));
        Assert.NotEqual("", s_catalog.DataVersion);
    }

    [Fact]
    public void Every_shape_but_tee_and_custom_is_listed() =>
        Assert.Equal(
            Enum.GetValues<SectionShape>().Except([SectionShape.Tee, SectionShape.Custom]),
            s_catalog.Items.Select(i => i.Section.Shape).Distinct().Order());

    [Theory]
    [InlineData("hss4x4x1/4", "HSS4X4X1/4")]
    [InlineData("HSS 4 X 4 X 1/4", "HSS4X4X1/4")]
    [InlineData("HSS4.0×4.0×1/4", "HSS4X4X1/4")]
    [InlineData("hss4x0.25", "HSS4.000X0.250")]
    [InlineData("w8x31", "W8X31")]
    [InlineData("ipe200", "IPE 200")]
    [InlineData("shs 100 x 100 x 5.0 en10219", "SHS 100x100x5 EN 10219")]
    [InlineData("chs 48.30x3.0", "CHS 48.3x3")]
    [InlineData("L50x50x5", "L 50x50x5")]
    [InlineData("HE 200 B", "HEB 200")]
    [InlineData("203x133x25 UB", "UB 203x133x25")]
    [InlineData("DN 100 Sch 40", "NPS 4 Sch 40")]
    [InlineData("NPS 1 1/2 sch 40", "NPS 1-1/2 Sch 40")]
    [InlineData("Hex 30 A/F", "Hex 30")]
    [InlineData("round 50.0", "Round 50")]
    [InlineData("Round 1\"", "Round 1 in")]
    [InlineData("Round 4/2 in", "Round 2 in")]
    [InlineData("Round 2\"", "Round 2 in")]
    [InlineData("RB 2", "Round 2 in")]
    [InlineData("rb 2\"", "Round 2 in")]
    [InlineData("Rd 50", "Round 50")]
    [InlineData("Round bar 50 mm", "Round 50")]
    [InlineData("Fl 100x10", "Flat 100x10")]
    [InlineData("HSS 4x4x.250", "HSS4X4X1/4")]
    [InlineData("HSS 4x4x0.25", "HSS4X4X1/4")]
    [InlineData("HSS 4\" x 4\" x 1/4\"", "HSS4X4X1/4")]
    [InlineData("HSS101.6x101.6x6.4", "HSS4X4X1/4")]
    [InlineData("L 2x2x1/4", "L2X2X1/4")]
    [InlineData("L 2 x 2 x .25", "L2X2X1/4")]
    [InlineData("L51x51x6.4", "L2X2X1/4")]
    [InlineData("W200x46.1", "W8X31")]
    [InlineData("W 8 x 31", "W8X31")]
    [InlineData("Pipe 4 SCH 40", "NPS 4 Sch 40")]
    [InlineData("4\" SCH 40 PIPE", "NPS 4 Sch 40")]
    [InlineData("4 inch pipe schedule 40", "NPS 4 Sch 40")]
    [InlineData("1-1/4\" Sch. 40 pipe", "NPS 1-1/4 Sch 40")]
    [InlineData("NPS 1.25 Sch 40", "NPS 1-1/4 Sch 40")]
    [InlineData("4\" STD pipe", "Pipe4STD")]
    [InlineData("Pipe 4 X-Strong", "Pipe4XS")]
    [InlineData("Pipe 4 SCH 80", "Pipe4XS")]
    public void Designations_are_found_in_other_spellings(string asked, string listed)
    {
        Assert.Equal(listed, s_catalog.Find(asked)?.Designation);
        Assert.NotNull(s_catalog.FindItem(asked)!.Published);
    }

    [Theory]
    [InlineData("Round 37", "Round 37", 37, 37)]
    [InlineData("ROUND37.50", "Round 37.5", 37.5, 37.5)]
    [InlineData("Square 45", "Square 45", 45, 45)]
    [InlineData("Hex 22", "Hex 22", 22, 25.4127)] // 22 * 2/sqrt 3 = 25.4034, up to the next 0.0127
    [InlineData("Flat 80x12", "Flat 80x12", 12, 80)]
    [InlineData("flat 80 X 012.125", "Flat 80x12.125", 12.125, 80)]
    [InlineData("Round 1.5 in", "Round 1.5 in", 38.1, 38.1)]
    [InlineData("Round 1-1/2 in", "Round 1.5 in", 38.1, 38.1)]
    [InlineData("Round 1 1/2\"", "Round 1.5 in", 38.1, 38.1)]
    [InlineData("Square 5/64 in", "Square 0.078125 in", 1.984375, 1.984375)]
    [InlineData("Flat 4x3/8 in", "Flat 4x0.375 in", 9.525, 101.6)]
    [InlineData("Flat 4x1/2", "Flat 4x0.5 in", 12.7, 101.6)]
    [InlineData("FL 4 x 1/2", "Flat 4x0.5 in", 12.7, 101.6)]
    [InlineData("FB 4x1", "Flat 4x1 in", 25.4, 101.6)]
    [InlineData("Flat 4\" x 1/2\"", "Flat 4x0.5 in", 12.7, 101.6)]
    [InlineData("Round 1-1/2", "Round 1.5 in", 38.1, 38.1)]
    [InlineData("Round .5 in", "Round 0.5 in", 12.7, 12.7)]
    [InlineData("Vkt 45", "Square 45", 45, 45)]
    [InlineData("SB 45mm", "Square 45", 45, 45)]
    public void Solid_bars_of_any_size_are_found_by_their_size(string asked, string designation, decimal height, decimal width)
    {
        var item = s_catalog.FindItem(asked);
        Assert.NotNull(item);
        Assert.Equal(designation, item.Section.Designation);
        Assert.Equal((Length.FromMillimeters(height), Length.FromMillimeters(width)), (item.Section.Height, item.Section.Width));
        Assert.Equal("dimensions in the designation", item.Section.Source);
        Assert.Null(item.Published);
        Assert.Equal(item.Section, s_catalog.Find(item.Section.Designation));
    }

    [Theory]
    [InlineData("")]
    [InlineData("Round")]
    [InlineData("Round 0")]
    [InlineData("Round -5")]
    [InlineData("Round 37.1234")]
    [InlineData("Round 1 00")] // neither 1 nor 100
    [InlineData("Round 20000")]
    [InlineData("Round 1/3 in")]
    [InlineData("Round 1/0 in")]
    [InlineData("Round 1-1/2 mm")]
    [InlineData("Flat 4 in x 10")]
    [InlineData("Flat 100 mm x 1 in")]
    [InlineData("4 SCH 40")] // of what?
    [InlineData("Pipe 4 SCH 41")]
    [InlineData("Round 50x10")]
    [InlineData("Flat 80")]
    [InlineData("Flat 80 12")]
    [InlineData("Flat 80x12x3")]
    [InlineData("SHS 100x100x5")] // cold formed and hot finished differ
    [InlineData("W8X3l")]
    public void What_is_no_section_is_not_found(string asked) => Assert.Null(s_catalog.Find(asked));

    [Fact]
    public void Cold_formed_and_hot_finished_tubes_of_one_size_differ() =>
        Assert.True(s_catalog.Find("SHS 100x100x5 EN 10219")!.Area < s_catalog.Find("SHS 100x100x5 EN 10210")!.Area);

    [Fact]
    public void Nearest_designations_come_first()
    {
        Assert.Equal(["W8X31"], s_catalog.Nearest("W8X3l", 1));
        Assert.Equal(["SHS 100x100x5 EN 10210", "SHS 100x100x5 EN 10219"], s_catalog.Nearest("SHS 100x100x5 EN", 2).Order());
        Assert.Equal(["SHS 100x100x5 EN 10210", "SHS 100x100x5 EN 10219"], s_catalog.Nearest("SHS 100x100x5", 2).Order());
        Assert.Equal(["HSS4X4X1/2", "HSS4X4X1/4"], s_catalog.Nearest("HSS4X4X3/8", 2).Order());
        Assert.Equal(5, s_catalog.Nearest("nothing like it", 5).Distinct().Count());
        Assert.Empty(s_catalog.Nearest("W8X31", 0));
    }

    [Fact]
    public void Dimensions_in_inches_are_kept_exactly()
    {
        var section = s_catalog.Find("W8X31")!;
        Assert.Equal((Length.FromInches(8m), Length.FromInches(8m)), (section.Height, section.Width));
        Assert.Equal(Length.FromInches(0.1875m), s_catalog.FindItem("HSS3X3X3/16")!.Dimensions.Wall);
    }
}
