using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Wire;

/// <summary>Against the conversion factors printed in NIST SP 811 (2008), appendix B.8.</summary>
public sealed class CustomaryUnitsTests
{
    [Fact]
    public void Factors_are_the_published_ones()
    {
        // foot per minute: 5.08 E-03 m/s, that is 0.3048 m/min.
        Assert.Equal(1000m, CustomaryUnits.FeetPerMinute(304.8m));
        // square inch: 6.4516 E-04 m2, that is 6.4516 cm2 and 645.16 mm2.
        Assert.Equal(100m, CustomaryUnits.SquareInchesPerMinute(645.16m));
        Assert.Equal(100m, CustomaryUnits.SquareInches(64_516m));
        // inch: 2.54 E-02 m.
        Assert.Equal(100m, CustomaryUnits.InchesPerMinute(2540m));
        // pound (avoirdupois): 4.535 923 7 E-01 kg.
        Assert.Equal(1_000_000m, CustomaryUnits.Pounds(453_592.37m));
        // horsepower (550 ft lbf/s): 7.456 999 E+02 W.
        Assert.Equal(1_000_000m, CustomaryUnits.Horsepower(745_699.9m), 0);
        Assert.Equal(1_000_000_000m, CustomaryUnits.Horsepower(745_699_871.5822702m));
    }

    [Fact]
    public void Twins_are_rounded_once_half_to_even()
    {
        Assert.Equal(328.1m, CustomaryUnits.FeetPerMinute(100m));
        Assert.Equal(0.2m, CustomaryUnits.FeetPerMinute(0.25m * 0.3048m));
        Assert.Equal(6.98m, CustomaryUnits.SquareInchesPerMinute(45m));
        Assert.Equal(0.12m, CustomaryUnits.InchesPerMinute(0.125m * 25.4m));
        Assert.Equal(2.205m, CustomaryUnits.Pounds(1m));
        Assert.Equal(1.34m, CustomaryUnits.Horsepower(1m));
        Assert.Equal(0.002m, CustomaryUnits.SquareInches(0.0025m * 645.16m));
    }
}
