namespace SawEngine.Benchmarks.Quality;

/// <summary>One line of figures a set.</summary>
internal static class SetReport
{
    public static void Head() =>
        Report.Say($"{"set",-24}{"instances",10}{"proved",8}{"matched",10}{"in one bar",12}{"unplaced",10}{"mean gap %",12}{"worst gap %",13}{"mean s",10}{"max s",10}");

    public static void Line(string name, List<MeasuredNest> nests)
    {
        var known = nests.Count(nest => nest.Instance.OptimumMicros is not null);
        var matched = known > 0 ? FormattableString.Invariant($"{nests.Count(nest => nest.MatchesOptimum)}/{known}") : "-";
        var gaps = nests.Select(nest => nest.GapPercent).OfType<double>().ToList();
        var (mean, worst) = gaps.Count > 0 ? (Percent(gaps.Average()), Percent(gaps.Max())) : ("-", "-");
        Report.Say($"{name,-24}{nests.Count,10}{nests.Count(nest => nest.IsProved),8}{matched,10}{nests.Count(nest => nest.IsWithinOneBar),12}{nests.Count(nest => nest.Unplaced > 0),10}{mean,12}{worst,13}{nests.Average(nest => nest.Seconds),10:0.0000}{nests.Max(nest => nest.Seconds),10:0.0000}");
    }

    /// <summary>Says what is wrong with the nests of a set, and how many things are.</summary>
    public static int Faults(string name, List<MeasuredNest> nests)
    {
        var faults = nests.SelectMany(nest => nest.Faults().Select(fault => (nest.Instance.Name, Fault: fault))).ToList();
        foreach (var (instance, fault) in faults)
            Report.Say($"!!! WRONG: {name} {instance}: {fault}");
        return faults.Count;
    }

    private static string Percent(double value) => value.ToString("0.0000", System.Globalization.CultureInfo.InvariantCulture);
}
