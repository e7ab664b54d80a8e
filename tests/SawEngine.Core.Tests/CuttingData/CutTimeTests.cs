using SawEngine.Core.CuttingData;
using SawEngine.Core.Orders;
using SawEngine.Core.Saws;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Tests.CuttingData;

/// <summary>The time in the work, the integral of dy/f(y), against closed forms and a plain quadrature.</summary>
public sealed class CutTimeTests
{
    private const int Slices = 100_000;

    /// <summary>Where the grade's rate limits the feed all the way, but for the tangents of a round, the time is area over rate.</summary>
    [Theory]
    [InlineData("Round 100")]
    [InlineData("Square 100")]
    [InlineData("Hexagon 55")]
    public void Rate_limited_time_is_area_over_rate(string designation)
    {
        var (profile, feed) = FeedOf(designation, "1045", Shop.Blade(2, 3));
        Assert.Equal(profile.Area / 100 / feed.Rate, feed.Through(profile).Minutes, 0.006 * profile.Area / 100 / feed.Rate);
    }

    /// <summary>Where the saw's fastest feed limits it, the time is travel over feed.</summary>
    [Fact]
    public void Feed_limited_time_is_travel_over_feed()
    {
        var (profile, feed) = FeedOf("Round 20", "6061", Shop.Blade(4, 6), fastestFeed: 5m);
        Assert.Equal(20d / 5, feed.Through(profile).Minutes, 1e-9);
    }

    /// <summary>All limits at once, through walls, webs, flanges and tangents.</summary>
    [Theory]
    [InlineData("IPE 200", "S355J2", 5, 8)]
    [InlineData("UPN 200", "S355J2", 5, 8)]
    [InlineData("L 80x80x8", "S235JR", 5, 8)]
    [InlineData("CHS 114.3x5", "S355J2", 6, 10)]
    [InlineData("SHS 100x100x5 EN 10219", "304", 6, 10)]
    [InlineData("Round 250", "Ti-6Al-4V", 1.4, 2)]
    public void Time_is_that_of_a_plain_quadrature(string designation, string grade, double coarsest, double finest)
    {
        var (profile, feed) = FeedOf(designation, grade, Shop.Blade((decimal)coarsest, (decimal)finest));
        var section = SectionCatalog.Standard.Find(designation)!;
        var (height, minutes) = (section.Height.ApproximateMillimeters, 0d);
        for (var i = 0; i < Slices; i++)
        {
            var runs = section.RunsAt((i + 0.5) / Slices * height).Select(run => run.End - run.Start).Where(run => run > 1e-9).ToList();
            var slice = new CutSlice(height / Slices, runs.Sum(), runs.DefaultIfEmpty(0).Max(), runs.DefaultIfEmpty(0).Min());
            minutes += slice.Thickness / feed.At(slice).Feed;
        }
        Assert.Equal(minutes, feed.Through(profile).Minutes, 1e-3 * minutes);
    }

    private static (CutProfile Profile, BladeFeed Feed) FeedOf(string designation, string grade, Blade blade, decimal fastestFeed = 1000m)
    {
        var saw = Shop.Saw(slowest: 5m, motor: 15m) with { FastestBladeFeedMillimetersPerMinute = fastestFeed };
        var profile = CutProfile.Of(SectionCatalog.Standard.Find(designation)!, EndCut.Square, CuttingParameters.Default);
        var speed = BladeSpeed.Of(profile, Shop.Grade(grade), saw, blade, CuttingParameters.Default);
        var load = new ToothLoad(profile, Shop.Grade(grade), blade, CuttingParameters.Default);
        return (profile, PowerFit.Fit(profile, Shop.Grade(grade), saw, blade, speed, load, share: 1, CuttingParameters.Default)!.Feed);
    }
}
