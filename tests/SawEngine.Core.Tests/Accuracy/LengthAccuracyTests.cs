using SawEngine.Core.Accuracy;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Tests.Accuracy;

/// <summary>|b m + s L| + sqrt(m e² + k²) by hand, rounded up to 1.27 µm.</summary>
public sealed class LengthAccuracyTests
{
    private static readonly SawAccuracy Saw = new() { IndexErrorPerStroke = Mm(0.05m), KerfError = Mm(0.05m), Squareness = 0.003m };

    [Theory]
    [InlineData(1, 0.07112)] // sqrt(2) x 0.05 = 0.07071
    [InlineData(4, 0.11303)] // sqrt(5) x 0.05 = 0.11180
    [InlineData(16, 0.20701)] // sqrt(17) x 0.05 = 0.20616
    public void Random_errors_of_strokes_add_up_by_their_squares_and_the_kerf_counts_once(int strokes, double largest) =>
        Assert.Equal((decimal)largest, LengthAccuracy.Of(Saw, Mm(1000m), strokes, null).Largest.Millimeters);

    [Fact]
    public void Bias_counts_by_stroke_and_scale_by_length()
    {
        // 4 x 0.02 - 50e-6 x 2000 = -0.02
        var accuracy = LengthAccuracy.Of(Saw with { IndexBiasPerStroke = Mm(0.02m), ScaleErrorPpm = -50m }, Mm(2000m), 4, null);
        Assert.Equal(-0.02032m, accuracy.Systematic.Millimeters);
        Assert.Equal(0.13208m, accuracy.Largest.Millimeters); // 0.02 + 0.11180
        Assert.Null(accuracy.IsHeld);
    }

    [Theory]
    [InlineData(0.12, true)]
    [InlineData(0.11, false)]
    public void Tolerance_is_held_where_the_error_stays_within_half_its_width(double side, bool isHeld)
    {
        var accuracy = LengthAccuracy.Of(Saw, Mm(2000m), 4, new Tolerance(Mm(2 * (decimal)side), Length.Zero));
        Assert.Equal(Mm((decimal)side), accuracy.Ordered);
        Assert.Equal(isHeld, accuracy.IsHeld);
        Assert.Equal(isHeld, accuracy.Cures.Count == 0);
    }

    [Fact]
    public void Cures_are_those_that_would_hold_it()
    {
        Assert.Equal([LengthCure.OneStroke, LengthCure.Stop, LengthCure.MachiningAllowance], LengthAccuracy.Of(Saw, Mm(2000m), 4, Both(0.08m)).Cures);
        Assert.Equal([LengthCure.Stop, LengthCure.MachiningAllowance], LengthAccuracy.Of(Saw, Mm(2000m), 4, Both(0.06m)).Cures);
        Assert.Equal([LengthCure.MachiningAllowance], LengthAccuracy.Of(Saw, Mm(2000m), 4, Both(0.02m)).Cures);
        Assert.Equal([LengthCure.Calibrate, LengthCure.Stop, LengthCure.MachiningAllowance], LengthAccuracy.Of(Saw with { ScaleErrorPpm = 100m }, Mm(2000m), 4, Both(0.15m)).Cures);
    }

    private static Tolerance Both(decimal side) => new(Mm(side), Mm(side));

    private static Length Mm(decimal millimeters) => Length.FromMillimeters(millimeters);
}
