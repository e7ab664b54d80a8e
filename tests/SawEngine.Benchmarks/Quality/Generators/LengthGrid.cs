namespace SawEngine.Benchmarks.Quality.Generators;

/// <summary>The grid on which the lengths of a shop order lie.</summary>
internal enum LengthGrid
{
    /// <summary>0.1 mm; kerf 1.6 mm.</summary>
    TenthMillimeter,

    /// <summary>1/64 in; kerf 0.063 in.</summary>
    SixtyFourths,

    /// <summary>0.001 mm, with no larger common divisor; kerf 1.6 mm.</summary>
    Micrometer,
}
