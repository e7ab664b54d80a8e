using SawEngine.Core.Cautions;
using SawEngine.Core.Grades;
using SawEngine.Core.Quantities;
using SawEngine.Core.Tests.CuttingData;

namespace SawEngine.Core.Tests.Cautions;

public sealed class CautionRulesTests
{
    /// <summary>NIOSH lifting equation: load constant 23 kg for an ideal lift.</summary>
    [Theory]
    [InlineData(23, null)]
    [InlineData(24, "lift_two_persons")]
    [InlineData(50, "lift_two_persons")]
    [InlineData(51, "crane_lift")]
    public void Lift_is_cautioned_by_mass(int kilograms, string? code) =>
        Assert.Equal(code, CautionRules.ForLift("Bar R50-6M", new(kilograms))?.Code);

    [Fact]
    public void Lift_says_what_is_lifted_and_its_mass() =>
        Assert.StartsWith("Bar R50-6M weighs 92.5 kg", CautionRules.ForLift("Bar R50-6M", new(92.481m))!.Detail, StringComparison.Ordinal);

    [Fact]
    public void Limits_of_the_shop_replace_the_default_ones() =>
        Assert.Null(CautionRules.ForLift("Bar", new(24m), new LiftLimits(new(25m), new(100m))));

    [Fact]
    public void Piece_shorter_than_it_is_high_may_tip()
    {
        var section = TestSection.Solid(50m, 80m);
        Assert.Equal("short_piece_tips", CautionRules.ForShortPiece(Length.FromMillimeters(79.9m), section)!.Code);
        Assert.Null(CautionRules.ForShortPiece(Length.FromMillimeters(80m), section));
    }

    [Theory]
    [InlineData("12L14", "lead_bearing")]
    [InlineData("C36000", "lead_bearing")]
    [InlineData("C17200", "beryllium")]
    [InlineData("Ti-6Al-4V", "combustible_metal_chips")]
    [InlineData("Zr 702", "combustible_metal_chips")]
    [InlineData("AZ31B", "magnesium_water_coolant")]
    [InlineData("6061", "combustible_metal_dust")]
    [InlineData("304", "work_hardening_keep_feed")]
    [InlineData("Alloy 625", "nickel_sensitizer")]
    public void Grade_carries_its_cautions(string designation, string code) =>
        Assert.Contains(CautionRules.ForGrade(Shop.Grade(designation), Shop.Saw()), caution => caution.Code == code);

    [Fact]
    public void Chromium_dust_is_cautioned_only_where_cut_dry()
    {
        Assert.DoesNotContain(CautionRules.ForGrade(Shop.Grade("304"), Shop.Saw()), caution => caution.Code == "chromium_dust");
        Assert.Contains(CautionRules.ForGrade(Shop.Grade("304"), Shop.Saw() with { Coolant = false }), caution => caution.Code == "chromium_dust");
    }

    [Fact]
    public void Magnesium_in_water_is_cautioned_only_with_coolant() =>
        Assert.DoesNotContain(CautionRules.ForGrade(Shop.Grade("AZ31B"), Shop.Saw() with { Coolant = false }), caution => caution.Code == "magnesium_water_coolant");

    [Fact]
    public void Magnesium_titanium_zirconium_and_beryllium_are_never_unattended()
    {
        var attendedOnly = GradeCatalog.Standard.Items.Where(CautionRules.IsAttendedOnly).Select(grade => grade.Group).Distinct(StringComparer.Ordinal);
        Assert.Equal(["beryllium copper", "magnesium alloy", "titanium", "zirconium"], attendedOnly.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_caution_defers_to_manual_codes_and_people_and_names_its_reference()
    {
        var codes = CautionCatalog.Items.Select(kind => kind.Code).ToArray();
        Assert.Equal(codes.Length, codes.Distinct(StringComparer.Ordinal).Count());
        Assert.All(CautionCatalog.Items, kind =>
        {
            var caution = Caution.Of(kind, "It", 1m);
            Assert.EndsWith(Caution.Deferral, caution.Detail, StringComparison.Ordinal);
            Assert.NotEmpty(caution.Reference);
        });
    }

    [Fact]
    public void Saw_with_coolant_adds_the_mist() => Assert.Equal(
        ["hot_sharp_piece", "blade_guard", "blade_change_lockout", "coolant_mist"],
        CautionRules.ForSaw(Shop.Saw()).Select(caution => caution.Code));

    [Theory]
    [InlineData("graphite", "graphite_dust", "29 CFR 1910.1000")]
    [InlineData("plastic", "plastics_dust", "29 CFR 1910.1000")]
    [InlineData("composite", "silica_dust", "29 CFR 1910.1053")]
    [InlineData("ceramic", "silica_dust", "29 CFR 1910.1053")]
    [InlineData("wood", "wood_dust", "NFPA 664")]
    public void What_is_no_metal_carries_the_caution_of_its_dust(string group, string code, string reference)
    {
        var caution = CautionRules.ForGrade(Own(group), Shop.Saw()).Single(found => found.Code == code);
        Assert.Contains(reference, caution.Reference, StringComparison.Ordinal);
        Assert.Equal(Confidence.FromMemory, caution.Confidence);
    }

    [Fact]
    public void Grade_that_is_cut_dry_says_so_on_a_saw_with_coolant_only()
    {
        var dry = Own("graphite") with { Coolant = CoolantUse.NotAllowed };
        Assert.Contains(CautionRules.ForGrade(dry, Shop.Saw()), caution => caution.Code == "coolant_not_allowed");
        Assert.DoesNotContain(CautionRules.ForGrade(dry, Shop.Saw() with { Coolant = false }), caution => caution.Code == "coolant_not_allowed");
        Assert.DoesNotContain(CautionRules.ForGrade(Own("graphite"), Shop.Saw()), caution => caution.Code == "coolant_not_allowed");
    }

    [Fact]
    public void Grade_that_is_cut_dry_has_its_dust_on_a_saw_with_coolant_too()
    {
        var codes = CautionRules.ForGrade(Shop.Grade("304") with { Coolant = CoolantUse.NotAllowed }, Shop.Saw()).Select(caution => caution.Code).ToList();
        Assert.Contains("chromium_dust", codes);
        Assert.DoesNotContain(CautionRules.ForGrade(Shop.Grade("AZ31B") with { Coolant = CoolantUse.NotAllowed }, Shop.Saw()), caution => caution.Code == "magnesium_water_coolant");
    }

    [Fact]
    public void Coated_stock_is_cautioned_by_its_coating()
    {
        Assert.Equal("zinc_coating", CautionRules.ForCoating(SawEngine.Core.Stock.Coating.Zinc)!.Code);
        Assert.Equal("painted_stock", CautionRules.ForCoating(SawEngine.Core.Stock.Coating.Paint)!.Code);
        Assert.Null(CautionRules.ForCoating(SawEngine.Core.Stock.Coating.None));
    }

    private static Grade Own(string group) => GradeCatalog.Standard.FromCaller(new()
    {
        Designation = "mine",
        Group = group,
        Density = new(1800m),
        HardnessHb = 10m,
        ReferenceBladeSpeed = new(100m),
        ReferenceCuttingRate = new(100m),
        UnitPowerKilowattsPerCm3PerMinute = 0.003m,
        BladeLifeSquareMeters = 1m,
    })!;
}
