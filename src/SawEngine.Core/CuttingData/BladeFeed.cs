namespace SawEngine.Core.CuttingData;

/// <summary>
/// Blade feed at a depth in mm/min: f = min(100 R/w, 1000 v h/p, the saw's fastest), but not below 1000 v h/p of the lightest load per tooth
/// as long as that stays within the grade's highest rate. R in cm2/min, v in m/min; w, h and p in mm.
/// </summary>
/// <param name="Rate">R.</param>
/// <param name="RateLimit">What sets R.</param>
/// <param name="FullRate">R before the motor limits it.</param>
/// <param name="HighestRate">The rate to which the lightest load per tooth may lift R.</param>
/// <param name="Speed">v.</param>
/// <param name="Load">Limits of h.</param>
/// <param name="Fastest">The saw's fastest blade feed.</param>
/// <param name="Share">What squareness or a new blade leaves of the full feed, which grade and teeth allow, but for the lightest load per tooth.</param>
internal sealed record BladeFeed(double Rate, CutLimit RateLimit, double FullRate, double HighestRate, double Speed, ToothLoad Load, double Fastest, double Share = 1)
{
    public (double Feed, CutLimit Limit) At(CutSlice slice) => At(slice, out _);

    /// <summary>As above, with the full feed, which grade and teeth allow.</summary>
    private (double Feed, CutLimit Limit) At(CutSlice slice, out double full)
    {
        full = Fastest;
        if (slice.Width <= 0)
            return (Fastest, CutLimit.BladeFeed);
        var byTooth = ByTooth(Load.MostAt(slice));
        full = Math.Min(100 * FullRate / slice.Width, byTooth);
        var (feed, limit) = (100 * Rate / slice.Width, RateLimit);
        if (byTooth < feed)
            (feed, limit) = (byTooth, CutLimit.ToothLoad);
        if (Fastest < feed)
            (feed, limit) = (Fastest, CutLimit.BladeFeed);
        if (Share < 1 && full * Share < feed)
            (feed, limit) = (full * Share, CutLimit.Squareness);
        var least = Math.Min(Fastest, LeastAt(slice));
        return least > feed ? (least, least < Fastest ? CutLimit.ToothLoadMinimum : CutLimit.BladeFeed) : (feed, limit);
    }

    /// <summary>The highest cutting rate on the way, in cm2/min.</summary>
    public double PeakRate(CutProfile profile) => profile.Slices.Max(slice => RateAt(slice, At(slice).Feed));

    /// <summary>The highest cutting rate that the lightest load per tooth asks for, in cm2/min.</summary>
    public double LeastPeakRate(CutProfile profile) =>
        profile.Slices.Max(slice => RateAt(slice, Math.Min(Fastest, LeastAt(slice))));

    /// <summary>Whether the lightest load per tooth is kept all the way.</summary>
    public bool KeepsLeast(CutProfile profile) => Load.Smallest <= 0 || profile.Slices.All(slice =>
        slice.Width <= 0 || At(slice).Feed >= ByTooth(Load.Smallest) * (1 - 1e-9));

    /// <summary>
    /// Cut time in minutes, the integral of dy/f(y), what limits the feed for the largest part of it, and how fast the blade goes through the material against the
    /// full feed.
    /// </summary>
    public (double Minutes, CutLimit Limit, double ShareOfFull) Through(CutProfile profile)
    {
        Span<double> minutesByLimit = stackalloc double[(int)CutLimit.Squareness + 1];
        var (full, inMaterial) = (0d, 0d);
        foreach (var slice in profile.Slices)
        {
            var (feed, limit) = At(slice, out var fullFeed);
            var minutes = slice.Thickness / feed;
            minutesByLimit[(int)limit] += minutes;
            if (slice.Width <= 0)
                continue;
            inMaterial += minutes;
            full += slice.Thickness / fullFeed;
        }

        var (sum, longest) = (0d, 0);
        for (var limit = 0; limit < minutesByLimit.Length; limit++)
        {
            sum += minutesByLimit[limit];
            if (minutesByLimit[limit] > minutesByLimit[longest])
                longest = limit;
        }

        return (sum, (CutLimit)longest, full / inMaterial);
    }

    private double LeastAt(CutSlice slice) =>
        slice.Width > 0 ? Math.Min(ByTooth(Load.LeastAt(slice)), 100 * HighestRate / slice.Width) : 0;

    private double ByTooth(double load) => 1000 * Speed * load / Load.Pitch;

    private static double RateAt(CutSlice slice, double feed) => slice.Width > 0 ? feed * slice.Width / 100 : 0;
}
