namespace SawEngine.Core.CuttingData;

/// <summary>A thin layer of a section on the blade's way, in mm.</summary>
/// <param name="Thickness">Its share of the travel.</param>
/// <param name="Width">All material that the blade is in.</param>
/// <param name="LongestRun">The longest run of it; 0 where there is none.</param>
/// <param name="ShortestRun">The shortest run of it; 0 where there is none.</param>
internal readonly record struct CutSlice(double Thickness, double Width, double LongestRun, double ShortestRun)
{
    private const double Tolerance = 1e-9;

    /// <summary>The slice where every run is wider and the way longer by so much.</summary>
    public CutSlice Inclined(double widening, double lengthening) =>
        new(Thickness * lengthening, Width * widening, LongestRun * widening, ShortestRun * widening);

    /// <summary>Whether the runs are as long as another slice's.</summary>
    public bool IsLike(CutSlice other) =>
        Math.Abs(Width - other.Width) < Tolerance
        && Math.Abs(LongestRun - other.LongestRun) < Tolerance
        && Math.Abs(ShortestRun - other.ShortestRun) < Tolerance;
}
