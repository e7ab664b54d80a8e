using SawEngine.Core.CuttingData;
using SawEngine.Core.Orders;

namespace SawEngine.Core.Tests.CuttingData;

/// <summary>
/// Blade speeds of Machinery's Handbook, 31st ed., p. 1245: bimetal, with coolant, 4 in width of cut, in ft/min;
/// its corrections by width, for dry cutting and for carbon steel.
/// </summary>
public sealed class HandbookSpeedTests
{
    private const decimal MetersPerFoot = 0.3048m;

    /// <summary>The handbook's 4140 at 250 ft/min is the annealed one; 4140 alone means the pre-hardened one.</summary>
    public static TheoryData<string, int> Speeds { get; } = new()
    {
        { "12L14", 425 }, { "1213", 400 }, { "1215", 400 }, { "1117", 340 }, { "1030", 330 }, { "1008", 320 }, { "1015", 320 }, { "1020", 320 },
        { "1025", 320 }, { "1035", 310 }, { "1018", 300 }, { "1021", 300 }, { "1022", 300 }, { "1026", 300 }, { "1513", 300 }, { "1137", 290 },
        { "1141", 280 }, { "1144", 280 }, { "41L40", 275 }, { "1040", 270 }, { "4130", 270 }, { "A36", 270 }, { "1042", 250 }, { "1541", 250 },
        { "4140 annealed", 250 }, { "4142", 250 }, { "8615", 240 }, { "8620", 240 }, { "8622", 240 }, { "W1", 225 }, { "1044", 220 }, { "1045", 220 },
        { "1330", 220 }, { "4340", 220 }, { "5160", 220 }, { "8630", 220 }, { "1345", 210 }, { "4145", 210 }, { "6150", 210 }, { "1060", 200 },
        { "4150", 200 }, { "8640", 200 }, { "A6", 200 }, { "O1", 200 }, { "S1", 200 }, { "H11", 190 }, { "H12", 190 }, { "H13", 190 }, { "L6", 190 },
        { "O6", 190 }, { "1095", 185 }, { "A2", 180 }, { "E9310", 175 }, { "A10", 160 }, { "52100", 160 }, { "S5", 140 }, { "S7", 125 }, { "M1", 110 },
        { "M2", 100 }, { "M42", 100 }, { "T1", 100 }, { "D2", 90 }, { "T15", 70 }, { "CP titanium", 80 }, { "Ti-5Al-2.5Sn", 75 }, { "Ti-6Al-4V", 70 },
        { "304", 120 },
    };

    [Theory]
    [MemberData(nameof(Speeds))]
    public void Speed_in_four_inches_of_solid_is_the_handbooks_within_ten_percent(string grade, int feetPerMinute)
    {
        var saw = Shop.Saw(fastest: 1000m, slowest: 1m, motor: 100m);
        var data = CuttingDataCalculator.For(TestSection.Round(101.6m), Shop.Grade(grade), saw, Shop.Blade(2, 3), EndCut.Square).Data!;
        var expected = feetPerMinute * MetersPerFoot;
        Assert.InRange(data.BladeSpeed.MetersPerMinute, expected * 0.9m, expected * 1.1m);
    }

    [Fact]
    public void All_67_grades_of_the_handbook_are_in_the_catalog() => Assert.Equal(67, Speeds.Count);

    [Theory]
    [InlineData(0.25, 1.15)]
    [InlineData(0.75, 1.12)]
    [InlineData(1.25, 1.10)]
    [InlineData(4, 1.00)]
    [InlineData(8, 0.88)]
    public void Width_of_cut_corrects_the_speed_as_printed_within_five_percent(double inches, double factor)
    {
        var section = TestSection.Solid((decimal)inches * 25.4m, 50m);
        var data = CuttingDataCalculator.For(section, Shop.Grade("1045"), Shop.Saw(), FittingBlade(inches), EndCut.Square).Data!;
        var expected = 220 * MetersPerFoot * (decimal)factor;
        Assert.InRange(data.BladeSpeed.MetersPerMinute, expected * 0.95m, expected * 1.05m);
    }

    [Fact]
    public void Dry_cutting_takes_30_to_50_percent_off_the_speed()
    {
        var wet = Speed(Shop.Saw(), Shop.Blade(2, 3));
        var dry = Speed(Shop.Saw() with { Coolant = false }, Shop.Blade(2, 3));
        Assert.InRange(dry / wet, 0.5m, 0.7m);
    }

    [Fact]
    public void Carbon_steel_teeth_halve_the_speed()
    {
        var bimetal = Speed(Shop.Saw(), Shop.Blade(2, 3));
        var carbonSteel = Speed(Shop.Saw(), Shop.Blade(2, 3, teeth: SawEngine.Core.Saws.ToothMaterial.CarbonSteel));
        Assert.InRange(carbonSteel / bimetal, 0.495m, 0.505m);
    }

    private static decimal Speed(SawEngine.Core.Saws.Saw saw, SawEngine.Core.Saws.Blade blade) =>
        CuttingDataCalculator.For(TestSection.Round(101.6m), Shop.Grade("1045"), saw, blade, EndCut.Square).Data!.BladeSpeed.MetersPerMinute;

    private static SawEngine.Core.Saws.Blade FittingBlade(double inches) => inches < 1 ? Shop.Blade(10, 14) : Shop.Blade(3, 4);
}
