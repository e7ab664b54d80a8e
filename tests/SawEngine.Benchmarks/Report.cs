namespace SawEngine.Benchmarks;

/// <summary>Figures on the console.</summary>
internal static class Report
{
    public static void Say(FormattableString text)
    {
#pragma warning disable RS0030 // The runner reports on the console.
        Console.WriteLine(FormattableString.Invariant(text));
#pragma warning restore RS0030
    }

    /// <summary>What the process is given.</summary>
    public static Stream StandardInput()
    {
#pragma warning disable RS0030 // The runner is given problems on standard input.
        return Console.OpenStandardInput();
#pragma warning restore RS0030
    }

    /// <summary>The value below which a share of the values lies.</summary>
    public static double Percentile(IEnumerable<double> values, double share)
    {
        var sorted = values.Order().ToList();
        return sorted[Math.Max(0, (int)Math.Ceiling(sorted.Count * share) - 1)];
    }
}
