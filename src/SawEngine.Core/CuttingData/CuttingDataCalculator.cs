using SawEngine.Core.Grades;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Scheduling;
using SawEngine.Core.Sections;

namespace SawEngine.Core.CuttingData;

/// <summary>
/// Cutting data of a cut from published speeds, the grade's cutting rate, the load per tooth and the motor's power.
/// The cutting rate is R = R_ref v/v_ref, with v corrected by width of cut, teeth and coolant and clipped to the saw's range.
/// Thin walls and narrow sections are held back by the load per tooth alone; no factor counts them a second time. A bundle has a lower highest rate, since its bars
/// give way a little; where the load per tooth asks for less than that, it alone counts.
/// </summary>
public static class CuttingDataCalculator
{
    /// <summary>Cuts longer than this many minutes are refused; no saw is meant to run them.</summary>
    private const double LongestMinutes = 100_000;

    /// <summary>
    /// Cutting data of a cut through a section as it lies on a saw with a blade. Lengths of teeth, kerf and speeds must be positive.
    /// What cannot be cut is a result with a code: those of <see cref="SawFit"/> and of <see cref="ObstacleCodes"/>.
    /// </summary>
    public static CuttingDataResult For(Section section, Grade grade, Saw saw, Blade blade, EndCut cut, CuttingParameters? parameters = null) =>
        For(section, grade, saw, blade, cut, CutBundle.Single, parameters);

    /// <summary>
    /// As above, for bars that are cut together; the codes are those of <see cref="BundleFit"/>, too. Where a squareness is ordered, the most that a face may be out of
    /// square over the blade's way, the blade feed is held back to it.
    /// </summary>
    public static CuttingDataResult For(Section section, Grade grade, Saw saw, Blade blade, EndCut cut, CutBundle bundle, CuttingParameters? parameters = null, Length? squareness = null)
    {
        parameters ??= CuttingParameters.Default;
        if (section.Area.SquareMillimeters <= 0 || section.Height <= Length.Zero)
            return CuttingDataResult.Infeasible(ObstacleCodes.NoMaterial, $"Section {section.Designation} has no area.");
        if (SawFit.Obstacle(saw, section, cut) is { } obstacle)
            return CuttingDataResult.Infeasible(obstacle, $"Saw {saw.SawId} does not cut section {section.Designation} at this angle as it lies.");
        if (BundleFit.Obstacle(saw, section, cut, bundle) is { } inBundle)
            return CuttingDataResult.Infeasible(inBundle, $"Saw {saw.SawId} does not cut section {section.Designation} {bundle.Wide} wide and {bundle.High} high as it lies.");
        return For(CutProfile.Of(section, cut, bundle, parameters, saw.Cant), grade, saw, blade, parameters, squareness);
    }

    /// <summary>As above, for a profile that the saw holds.</summary>
    internal static CuttingDataResult For(CutProfile profile, Grade grade, Saw saw, Blade blade, CuttingParameters parameters, Length? squareness = null)
    {
        var teeth = TeethCount.Of(profile, blade);
        if (teeth.Deciding < (double)parameters.FewestTeeth)
            return CuttingDataResult.Infeasible(ObstacleCodes.TooFewTeeth, Text.Of($"Blade {blade.BladeId} has only {teeth.Deciding:0.00} teeth in the work."));
        var speed = BladeSpeed.Of(profile, grade, saw, blade, parameters);
        var load = new ToothLoad(profile, grade, blade, parameters);
        var lead = BladeLead.Of(profile, saw, blade, parameters);
        var feed = PowerFit.Fit(profile, grade, saw, blade, speed, load, lead.FeedShareFor(squareness), parameters);
        if (feed is null)
            return CuttingDataResult.Infeasible(ObstacleCodes.NotEnoughPower, Text.Of($"Saw {saw.SawId} has not the power for the lightest load per tooth."));
        var (minutes, limit, shareOfFull) = feed.Feed.Through(profile);
        if (!(minutes <= LongestMinutes))
            return CuttingDataResult.Infeasible(ObstacleCodes.TakesTooLong, Text.Of($"The cut would take longer than {LongestMinutes:0} min."));
        var outOfSquare = lead.OutOfSquare(shareOfFull);
        return CuttingDataResult.Feasible(new CutData
        {
            BladeId = blade.BladeId,
            BladeSpeed = new(Rounded.To(feed.Feed.Speed, 1)),
            CuttingRate = new(Rounded.To(profile.Area / 100 / minutes, 1)),
            BladeFeedMillimetersPerMinute = Rounded.To(profile.HeadTravel / minutes, 1),
            LimitedBy = limit,
            TeethInWork = teeth.ToTeethInWork(),
            PowerKilowatts = Rounded.To(feed.Kilowatts, 2),
            CutSeconds = Rounded.UpToTenth(minutes * 60),
            OutOfSquare = outOfSquare,
            BreakIn = BreakInOf(profile, feed.Feed, minutes, parameters),
            CutArea = new(Rounded.To(profile.Area, 3)),
            BladeLifeSquareMeters = BladeLife.Of(grade, blade),
            Factors = [.. speed.Factors, .. RateFactors(profile, saw, feed, parameters)],
            Warnings = [.. CutWarnings.Of(profile, teeth, speed, feed.Feed, saw, blade, parameters, !(outOfSquare > squareness))],
        });
    }

    private static BreakIn BreakInOf(CutProfile profile, BladeFeed feed, double minutes, CuttingParameters parameters)
    {
        var slow = (feed with { Share = feed.Share * (double)parameters.BreakInFeedFactor }).Through(profile).Minutes;
        var cuts = Math.Ceiling((double)parameters.BreakInAreaSquareMeters * 1_000_000 / profile.Area);
        return new((long)Math.Min(cuts, ScheduleSaw.FullBladeLife), Rounded.To(minutes / slow, 3), Rounded.UpToTenth(slow * 60));
    }

    private static IEnumerable<AppliedFactor> RateFactors(CutProfile profile, Saw saw, FittedFeed feed, CuttingParameters parameters)
    {
        if (profile.IsBundle)
            yield return new("bundle", parameters.BundleFactor(profile.IsSolid), "0.7 to 0.85 for solids, 0.5 to 0.65 for tubes; from memory", Confidence.FromMemory);
        if (feed.Feed.Share < 1)
            yield return new("squareness", Rounded.To(feed.Feed.Share, 4), "the ordered squareness, in proportion to the blade feed; from memory", Confidence.FromMemory);
        if (saw.RateFactor != 1m)
            yield return new("rate_factor", saw.RateFactor, "the shop's own measurements", Confidence.Caller);
        if (feed.PowerFactor < 1)
            yield return new("power", Rounded.To(feed.PowerFactor, 4), "the motor's power", Confidence.Computed);
    }
}
