using SawEngine.Core.Grades;

namespace SawEngine.Core.Tests.Grades;

/// <summary>Designations as shops and mills write them.</summary>
public sealed class GradeSpellingTests
{
    private static readonly GradeCatalog Catalog = GradeCatalog.Standard;

    [Theory]
    [InlineData("C1018", "1018")]
    [InlineData("AISI C1045", "1045")]
    [InlineData("C12L14", "12L14")]
    [InlineData("SS304", "304")]
    [InlineData("AISI 304", "304")]
    [InlineData("304 SS", "304")]
    [InlineData("AISI 304 SS", "304")]
    [InlineData("304 Stainless Steel", "304")]
    [InlineData("Type 316L", "316L")]
    [InlineData("T-303", "303")]
    [InlineData("A500-B", "A500 Gr B")]
    [InlineData("A500 Gr. B", "A500 Gr B")]
    [InlineData("A500 Grade B", "A500 Gr B")]
    [InlineData("ASTM A500 grade C", "A500 Gr C")]
    [InlineData("A53 B", "A53 Gr B")]
    [InlineData("A106-B", "A106 Gr B")]
    [InlineData("A513", "A513")]
    [InlineData("A36", "A36")]
    [InlineData("A992", "A992")]
    [InlineData("A572-50", "A572 Gr 50")]
    [InlineData("A572 Gr.50", "A572 Gr 50")]
    [InlineData("ASTM A48 Cl. 30", "A48 Class 30")]
    [InlineData("S355J2+N", "S355J2")]
    [InlineData("S355J2+AR", "S355J2")]
    [InlineData("s420m", "S420M")]
    [InlineData("1.0577", "S355J2")]
    [InlineData("1.0577+N", "S355J2")]
    [InlineData("42CrMo4+QT", "42CrMo4+QT")]
    [InlineData("1.4301+AT", "X5CrNi18-10")]
    [InlineData("W.Nr. 1.4301", "X5CrNi18-10")]
    [InlineData("EN AW-6061 T6", "EN AW-6061")]
    [InlineData("EN AW 6082 T6", "EN AW-6082")]
    [InlineData("6061-T651", "6061-T6")]
    [InlineData("AA 6061-T6511", "6061-T6")]
    [InlineData("7075 T6", "7075-T651")]
    [InlineData("2024-T3", "2024-T351")]
    [InlineData("A356-T6", "A356")]
    [InlineData("EN-GJL-200 (5.1300)", "EN-GJL-200")]
    [InlineData("Alloy 625 (Ni-Cr-Mo-Nb)", "Alloy 625")]
    [InlineData("Ti Gr. 5", "Ti-6Al-4V")]
    [InlineData("Ti-Grade 2", "CP titanium Grade 2")]
    public void Usual_spelling_finds_the_grade(string spelling, string expected)
    {
        var match = Catalog.Match(spelling);
        Assert.True(match is not null, spelling);
        Assert.False(match.IsAmbiguous);
        Assert.Contains(expected, match.Grade.Designations);
    }

    [Theory]
    [InlineData("4140 annealed+N", "4140 annealed", false)]
    [InlineData("42CrMo4+N", "42CrMo4+QT", true)]
    [InlineData("AISI 4140", "4140 pre-hard", true)]
    public void What_a_spelling_leaves_open_means_the_hardest(string spelling, string expected, bool isAmbiguous)
    {
        var match = Catalog.Match(spelling)!;
        Assert.Equal((expected, isAmbiguous), (match.Grade.Designation, match.IsAmbiguous));
    }

    [Theory]
    [InlineData("SS1018")] // not stainless
    [InlineData("1018 SS")]
    [InlineData("6061-T4")] // softer
    [InlineData("6061-O")]
    [InlineData("7075-T73")]
    [InlineData("C304")]
    [InlineData("SS")]
    [InlineData("+N")]
    [InlineData("A500")] // of no grade
    public void What_says_something_else_is_not_found(string spelling) => Assert.Null(Catalog.Match(spelling));

    [Theory]
    [InlineData("A500 Gr D", "A500 Gr A", "A500 Gr B", "A500 Gr C")]
    [InlineData("304H", "304", "304L", null)]
    [InlineData("S355J3", "S355J0", "S355J2", "S355JR")]
    [InlineData("4141", "4140", "4142", "4145")]
    [InlineData("6061-T4", "6061", "6061-T6", null)]
    public void Same_number_comes_first_among_the_nearest(string unknown, string first, string second, string? third) =>
        Assert.Equal(((string?[])[first, second, third]).OfType<string>(), Catalog.Nearest(unknown, third is null ? 2 : 3).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_designation_finds_a_grade_that_has_it() => Assert.All(
        Catalog.Items.SelectMany(grade => grade.Designations), designation => Assert.Contains(designation, Catalog.Find(designation)!.Designations));
}
