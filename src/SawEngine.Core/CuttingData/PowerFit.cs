using SawEngine.Core.Grades;
using SawEngine.Core.Saws;

namespace SawEngine.Core.CuttingData;

/// <summary>
/// Fits the blade feed to the motor. Short of power: a lower blade speed down to the base speed where that is known, then a lighter load per tooth,
/// never under its minimum. Where the base speed is unknown, a lower blade speed is the last resort.
/// </summary>
internal sealed class PowerFit
{
    private const double Tolerance = 1 + 1e-9;

    private readonly CutProfile profile;
    private readonly Grade grade;
    private readonly Saw saw;
    private readonly BladeSpeed speed;
    private readonly ToothLoad load;
    private readonly double largestRateShare;
    private readonly double bundleFactor;
    private readonly CuttingPower power;

    private PowerFit(CutProfile profile, Grade grade, Saw saw, Blade blade, BladeSpeed speed, ToothLoad load, double share, CuttingParameters parameters)
    {
        this.profile = profile;
        this.grade = grade;
        this.saw = saw;
        this.speed = speed;
        this.load = load;
        this.share = share;
        largestRateShare = (double)parameters.LargestRateShare;
        bundleFactor = profile.IsBundle ? (double)parameters.BundleFactor(profile.IsSolid) : 1;
        fastestFeed = (double)saw.FastestBladeFeedMillimetersPerMinute * profile.Travel / profile.HeadTravel;
        power = new(
            blade.Kerf.ApproximateMillimeters,
            (double)grade.UnitPowerKilowattsPerCm3PerMinute.Value,
            (double)parameters.ThinChipFactor,
            (double)parameters.WearFactor,
            (double)saw.DriveEfficiency);
    }

    /// <summary>The fastest blade feed square to the blade; a canted head descends upright.</summary>
    private readonly double fastestFeed;

    private readonly double share;

    private double Slowest => (double)saw.SlowestBladeSpeed.MetersPerMinute;

    private double? Base => (double?)saw.BaseBladeSpeed?.MetersPerMinute;

    /// <summary>Null where even the lightest load per tooth is more than the motor can drive.</summary>
    public static FittedFeed? Fit(CutProfile profile, Grade grade, Saw saw, Blade blade, BladeSpeed speed, ToothLoad load, double share, CuttingParameters parameters)
    {
        var fit = new PowerFit(profile, grade, saw, blade, speed, load, share, parameters);
        var wanted = fit.FeedAt(speed.Reached, speed.IsClippedDown ? CutLimit.SawSpeedRange : CutLimit.GradeRate);
        if (fit.Fitted(wanted) is not { } feed)
            return null;
        return new(feed, fit.power.Kilowatts(feed.PeakRate(profile)), feed.Rate / wanted.Rate);
    }

    private BladeFeed? Fitted(BladeFeed wanted)
    {
        if (IsEnoughFor(wanted))
            return wanted;
        var slowed = SlowedTowardBase(wanted);
        if (IsEnoughFor(slowed))
            return slowed;
        return LeastIsDriven(slowed) is { } driven
            ? driven with { Rate = Math.Min(driven.Rate, DrivenRate(driven.Speed)), RateLimit = CutLimit.Power }
            : null;
    }

    private bool IsEnoughFor(BladeFeed feed) => feed.PeakRate(profile) <= DrivenRate(feed.Speed) * Tolerance;

    /// <summary>Above the base speed the motor has its full power, so that slowing saves power in proportion and keeps the load per tooth.</summary>
    private BladeFeed SlowedTowardBase(BladeFeed feed)
    {
        if (Base is not { } basis || feed.Speed <= basis)
            return feed;
        var needed = feed.Speed * DrivenRate(feed.Speed) / feed.PeakRate(profile);
        return SlowedTo(feed, Math.Max(needed, Math.Max(basis, Slowest)));
    }

    private BladeFeed? LeastIsDriven(BladeFeed feed)
    {
        var least = feed.LeastPeakRate(profile);
        var driven = DrivenRate(feed.Speed);
        if (least <= driven * Tolerance)
            return feed;
        var needed = feed.Speed * driven / least;
        return Base is null && needed >= Slowest ? SlowedTo(feed, needed) : null;
    }

    private BladeFeed SlowedTo(BladeFeed feed, double bladeSpeed) =>
        bladeSpeed >= feed.Speed ? feed : FeedAt(bladeSpeed, CutLimit.Power);

    /// <summary>The cutting rate in cm2/min that the motor drives; a constant-torque drive loses power below its base speed.</summary>
    private double DrivenRate(double bladeSpeed)
    {
        var rated = (double)saw.MotorPowerKilowatts;
        return power.RateAt(Base is { } basis && bladeSpeed < basis ? rated * bladeSpeed / basis : rated);
    }

    /// <summary>R = R_ref v/v_ref times the shop's rate factor and that of a bundle; a speed above the grade's own does not raise it.</summary>
    private BladeFeed FeedAt(double bladeSpeed, CutLimit limit)
    {
        var reference = (double)grade.ReferenceBladeSpeed.Value.MetersPerMinute;
        var rate = (double)grade.ReferenceCuttingRate.Value.SquareCentimetersPerMinute * Math.Min(speed.Wanted, bladeSpeed) / reference * (double)saw.RateFactor * bundleFactor;
        return new(rate, limit, rate, rate * largestRateShare, bladeSpeed, load, fastestFeed, share);
    }
}
