using SawEngine.Core.Grades;

namespace SawEngine.Core.Tests.Grades;

public sealed class GradeCatalogTests
{
    private static readonly GradeCatalog Catalog = GradeCatalog.Standard;

    [Theory]
    [InlineData("S235JR", "S235JR")]
    [InlineData("1.0038", "S235JR")]
    [InlineData("S355J2", "S355J2")]
    [InlineData("C45", "C45")]
    [InlineData("c 45", "C45")]
    [InlineData("1.0503", "C45")]
    [InlineData("1.1191", "C45E")]
    [InlineData("1045", "1045")]
    [InlineData("AISI 1045", "1045")]
    [InlineData("G10450", "1045")]
    [InlineData("UNS G10450", "1045")]
    [InlineData("a36", "A36")]
    [InlineData("ASTM A36", "A36")]
    [InlineData("A572 Gr 50", "A572 Gr 50")]
    [InlineData("42CrMo4+QT", "42CrMo4+QT")]
    [InlineData("42CrMo4 +QT", "42CrMo4+QT")]
    [InlineData("304", "304")]
    [InlineData("304L", "304L")]
    [InlineData("1.4301", "X5CrNi18-10")]
    [InlineData("316L", "316L")]
    [InlineData("EN AW-6061", "EN AW-6061")]
    [InlineData("EN AW 6061", "EN AW-6061")]
    [InlineData("Ti-6Al-4V", "Ti-6Al-4V")]
    [InlineData("ti6al4v", "Ti-6Al-4V")]
    [InlineData("17-4 PH", "17-4PH")]
    [InlineData("EN-GJL-200", "EN-GJL-200")]
    public void Grade_is_found_by_any_designation(string designation, string expected)
    {
        var match = Catalog.Match(designation)!;
        Assert.Equal(expected, match.Grade.Designation);
        Assert.False(match.IsAmbiguous);
    }

    [Theory]
    [InlineData("4140", "4140 pre-hard", "4140 annealed")]
    [InlineData("G41400", "4140 pre-hard", "4140 annealed")]
    [InlineData("42CrMo4", "42CrMo4+QT", "42CrMo4+A")]
    [InlineData("1.7225", "42CrMo4+QT", "42CrMo4+A")]
    public void Designation_of_several_conditions_means_the_hardest_and_is_flagged(string designation, string hardest, string other)
    {
        var match = Catalog.Match(designation)!;
        Assert.True(match.IsAmbiguous);
        Assert.Equal(hardest, match.Grade.Designation);
        Assert.Equal(other, Assert.Single(match.Alternatives).Designation);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("unobtainium")]
    [InlineData("EN")]
    public void Unknown_designation_is_not_found(string designation) => Assert.Null(Catalog.Match(designation));

    [Fact]
    public void Misspelt_designation_has_those_one_letter_away_as_the_nearest()
    {
        Assert.Equal(["S355J0", "S355J2", "S355JR"], Catalog.Nearest("S355J3", 3));
    }

    [Fact]
    public void Designations_of_two_standards_are_two_grades() => Assert.NotEqual(Catalog.Find("A36"), Catalog.Find("S235JR"));

    [Fact]
    public void Every_grade_has_plausible_values_with_sources()
    {
        Assert.Equal("2026-11", Catalog.DataVersion);
        Assert.Equal(Catalog.Items.Count, Catalog.Items.Select(grade => grade.Designation).Distinct(StringComparer.Ordinal).Count());
        Assert.All(Catalog.Items, grade =>
        {
            Assert.InRange(grade.Density.Value.KilogramsPerCubicMeter, 1700m, 9000m);
            Assert.InRange(grade.ReferenceBladeSpeed.Value.MetersPerMinute, 10m, 600m);
            Assert.InRange(grade.ReferenceCuttingRate.Value.SquareCentimetersPerMinute, 3m, 600m);
            Assert.InRange(grade.UnitPowerKilowattsPerCm3PerMinute.Value, 0.004m, 0.06m);
            Assert.InRange(grade.BladeLifeSquareMeters.Value, 0.3m, 10m);
            Assert.True(grade.LowestHardnessHb <= grade.HighestHardnessHb);
            Assert.All(
                [grade.Density.Source, grade.ReferenceBladeSpeed.Source, grade.ReferenceCuttingRate.Source, grade.UnitPowerKilowattsPerCm3PerMinute.Source, grade.BladeLifeSquareMeters.Source],
                source => Assert.NotEmpty(source));
            Assert.All(grade.CautionCodes, code => Assert.NotNull(SawEngine.Core.Cautions.CautionCatalog.Find(code)));
        });
    }

    /// <summary>EN 10060 prints 15.4 kg/m for a round of 50 mm (from memory); 6 m of it weigh 92.481 kg.</summary>
    [Fact]
    public void Six_meters_of_50_mm_round_in_C45_weigh_92_481_kilograms()
    {
        var area = new SawEngine.Core.Quantities.Area(3.14159265m * 25m * 25m);
        var mass = Catalog.Find("C45")!.Density.Value.MassOf(area, SawEngine.Core.Quantities.Length.FromMillimeters(6000m));
        Assert.InRange(mass.Kilograms, 92.481m * 0.999m, 92.481m * 1.001m);
    }

    /// <summary>
    /// Machinery's Handbook, 31st ed., p. 1147, table 1b, in hp per in3/min by group and hardness; 1 hp per in3/min = 0.0455 kW per cm3/min.
    /// </summary>
    [Theory]
    [InlineData("1018", 0.69)] // plain carbon, 120-140 HB
    [InlineData("1117", 0.43)] // free-machining 11xx, 120-160 HB: 0.42 to 0.44
    [InlineData("1045", 0.80)] // plain carbon, 160-200 HB: 0.78 to 0.82
    [InlineData("1095", 0.84)] // plain carbon, 180-220 HB: 0.82 to 0.85
    [InlineData("1030", 0.74)] // plain carbon, 140-160 HB
    [InlineData("1137", 0.55)] // 1137-1151, 200-220 HB
    [InlineData("4140 annealed", 0.70)] // alloy A, 180-220 HB: 0.69 to 0.72
    [InlineData("4140 pre-hard", 0.87)] // alloy A, 280-300 HB
    [InlineData("8620", 0.59)] // alloy B, 160-180 HB
    [InlineData("8630", 0.62)] // alloy B, 180-200 HB
    [InlineData("52100", 0.84)] // 1330, 1340, E52100, 180-210 HB: 0.83 to 0.87
    [InlineData("1330", 0.83)] // the same group, 180-200 HB
    public void Unit_power_is_the_handbooks_within_three_percent(string designation, double horsepower)
    {
        var power = Catalog.Find(designation)!.UnitPowerKilowattsPerCm3PerMinute;
        Assert.Equal(Confidence.Published, power.Confidence);
        Assert.InRange((double)power.Value / 0.0455, horsepower * 0.97, horsepower * 1.03);
    }

    [Fact]
    public void Equivalent_takes_values_over_at_a_lower_confidence()
    {
        var own = Catalog.Find("1045")!.ReferenceBladeSpeed;
        var equivalent = Catalog.Find("C45")!.ReferenceBladeSpeed;
        var near = Catalog.Find("35S20")!.ReferenceBladeSpeed;
        Assert.Equal((67.1m, Confidence.Secondary), (own.Value.MetersPerMinute, own.Confidence));
        Assert.Equal((67.1m, Confidence.CommonPractice), (equivalent.Value.MetersPerMinute, equivalent.Confidence));
        Assert.EndsWith("of 1045", equivalent.Source, StringComparison.Ordinal);
        Assert.Equal(Confidence.FromMemory, near.Confidence);
    }

    [Fact]
    public void Callers_grade_takes_over_what_it_leaves_out()
    {
        var grade = Catalog.FromCaller(new CallerGrade { Designation = "shop steel", LikeGrade = "C45", Density = new(7800m), ReferenceBladeSpeed = new(80m) })!;
        Assert.Equal(7800m, grade.Density.Value.KilogramsPerCubicMeter);
        Assert.Equal(Confidence.Caller, grade.ReferenceBladeSpeed.Confidence);
        Assert.Equal(Confidence.FromMemory, grade.ReferenceCuttingRate.Confidence);
        Assert.InRange(grade.ReferenceCuttingRate.Value.SquareCentimetersPerMinute / 55m, 80m / 67.1m - 0.001m, 80m / 67.1m + 0.001m);
    }

    [Fact]
    public void Callers_grade_of_a_group_is_like_its_slowest_and_keeps_its_dangers()
    {
        var grade = Catalog.FromCaller(new CallerGrade { Designation = "shop titanium", Group = "titanium", LikeGrade = "C45", Density = new(4500m) })!;
        Assert.True(SawEngine.Core.Cautions.CautionRules.IsAttendedOnly(grade));
        Assert.Equal(
            Catalog.Find("Ti-6Al-4V")!.ReferenceCuttingRate.Value,
            Catalog.FromCaller(new CallerGrade { Designation = "shop titanium", Group = "titanium", Density = new(4500m) })!.ReferenceCuttingRate.Value);
    }

    [Fact]
    public void Callers_grade_like_nothing_known_is_refused() =>
        Assert.Null(Catalog.FromCaller(new CallerGrade { Designation = "x", Group = "unobtainium", Density = new(1m) }));

    /// <summary>About 4 % per 10 HB above 200 HB and above the like grade's, not below 0.3 (from memory).</summary>
    [Theory]
    [InlineData(190, 1.0)]
    [InlineData(200, 1.0)]
    [InlineData(250, 0.8)]
    [InlineData(375, 0.3)]
    [InlineData(600, 0.3)]
    public void Hardness_of_a_callers_grade_slows_it(int hardness, double factor)
    {
        var grade = Catalog.FromCaller(new CallerGrade { Designation = "x", LikeGrade = "1045", Density = new(7850m), HardnessHb = hardness })!;
        Assert.Equal(67.1m * (decimal)factor, grade.ReferenceBladeSpeed.Value.MetersPerMinute);
        Assert.Equal(55m * (decimal)factor, grade.ReferenceCuttingRate.Value.SquareCentimetersPerMinute);
    }

    [Fact]
    public void Callers_grade_that_states_everything_needs_no_like_grade()
    {
        var grade = Catalog.FromCaller(Graphite)!;
        Assert.Equal(("graphite", 120m, 10m), (grade.Group, grade.ReferenceBladeSpeed.Value.MetersPerMinute, grade.HighestHardnessHb));
        Assert.All(
            [grade.ReferenceBladeSpeed.Confidence, grade.ReferenceCuttingRate.Confidence, grade.UnitPowerKilowattsPerCm3PerMinute.Confidence, grade.BladeLifeSquareMeters.Confidence, grade.Density.Confidence],
            confidence => Assert.Equal(Confidence.Caller, confidence));
        Assert.Equal(["graphite_dust"], grade.CautionCodes);
    }

    [Fact]
    public void Callers_grade_without_a_group_keeps_its_chips_apart_from_all_others() =>
        Assert.Equal("other: my alloy", Catalog.FromCaller(Graphite with { Designation = "my alloy", Group = null })!.Group);

    [Fact]
    public void Callers_grade_that_is_like_nothing_and_leaves_a_value_out_is_none()
    {
        Assert.All(
            [
                Graphite with { HardnessHb = null }, Graphite with { ReferenceBladeSpeed = null }, Graphite with { ReferenceCuttingRate = null },
                Graphite with { UnitPowerKilowattsPerCm3PerMinute = null }, Graphite with { BladeLifeSquareMeters = null }, Graphite with { Group = "cheese" }, Graphite with { LikeGrade = "cheese" },
            ],
            stated => Assert.Null(Catalog.FromCaller(stated)));
    }

    [Fact]
    public void Every_chip_group_is_apart_from_the_catalogs_and_has_cautions() => Assert.All(Catalog.ChipGroups, group =>
    {
        Assert.DoesNotContain(group.Group, Catalog.Groups);
        Assert.NotEmpty(group.CautionCodes);
        Assert.All(group.CautionCodes, code => Assert.NotNull(SawEngine.Core.Cautions.CautionCatalog.Find(code)));
    });

    private static CallerGrade Graphite { get; } = new()
    {
        Designation = "EDM graphite",
        Group = "Graphite",
        Density = new(1800m),
        HardnessHb = 10m,
        ReferenceBladeSpeed = new(120m),
        ReferenceCuttingRate = new(150m),
        UnitPowerKilowattsPerCm3PerMinute = 0.003m,
        BladeLifeSquareMeters = 1m,
    };
}
