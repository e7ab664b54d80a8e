namespace SawEngine.Benchmarks.Quality;

/// <summary>How time grows with size: a table and the exponent of the power law fitted by least squares on logarithms.</summary>
internal static class GrowthReport
{
    public static void Say(string curve, IReadOnlyList<(int Size, double Seconds)> points)
    {
        Report.Say($"{curve}: {"size",10}{"mean s",12}");
        foreach (var (size, seconds) in points)
            Report.Say($"{"",-16}{size,11}{seconds,12:0.0000}");
        if (points.Count > 1)
            Report.Say($"    time grows as size to the power {Exponent(points):0.00}");
    }

    private static double Exponent(IReadOnlyList<(int Size, double Seconds)> points)
    {
        var logs = points.Select(point => (X: Math.Log(point.Size), Y: Math.Log(point.Seconds))).ToList();
        var (meanX, meanY) = (logs.Average(log => log.X), logs.Average(log => log.Y));
        return logs.Sum(log => (log.X - meanX) * (log.Y - meanY)) / logs.Sum(log => (log.X - meanX) * (log.X - meanX));
    }
}
