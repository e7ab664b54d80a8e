using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Accuracy;

/// <summary>
/// How exactly a saw cuts pieces of a length. Random errors of m strokes add up by their squares, systematic ones by their number: the largest error is
/// |b m + s L| + sqrt(m e² + k²) with the bias b, the error e of a stroke, s of the scale and k of the kerf. A blade that leads tilts both faces alike: that
/// spoils squareness, not length.
/// </summary>
/// <param name="Strokes">Strokes of the bar feed for a piece.</param>
/// <param name="Systematic">The systematic part b m + s L, rounded to 1.27 µm (0.00005 in), which both units write exactly.</param>
/// <param name="Largest">The largest error to either side, rounded up to 1.27 µm.</param>
/// <param name="Ordered">What the order allows to either side of the aim, the middle of the tolerance; null where nothing is ordered.</param>
/// <param name="Cures">What would hold the tolerance, most likely first; empty where it is held.</param>
public sealed record LengthAccuracy(long Strokes, Length Systematic, Length Largest, Length? Ordered, IReadOnlyList<LengthCure> Cures)
{
    /// <summary>Grid of errors in nanometers: 0.00005 in.</summary>
    private const long Grid = 1_270;

    /// <summary>Whether the tolerance is held; null where none is ordered.</summary>
    public bool? IsHeld => Ordered is { } ordered ? Largest <= ordered : null;

    /// <summary>The accuracy of a length that is cut after so many strokes.</summary>
    public static LengthAccuracy Of(SawAccuracy saw, Length length, long strokes, Tolerance? ordered)
    {
        var allowed = ordered is { } tolerance ? new Length((tolerance.Plus + tolerance.Minus).Nanometers / 2) : (Length?)null;
        var (systematic, random) = (SystematicOf(saw, length, strokes), RandomOf(saw, strokes));
        var largest = UpToGrid(Math.Abs(systematic) + random);
        return new(strokes, ToGrid(systematic), largest, allowed, allowed is { } limit && largest > limit ? [.. CuresFor(saw, length, strokes, limit)] : []);
    }

    private static IEnumerable<LengthCure> CuresFor(SawAccuracy saw, Length length, long strokes, Length allowed)
    {
        if (strokes > 1 && UpToGrid(Math.Abs(SystematicOf(saw, length, 1)) + RandomOf(saw, 1)) <= allowed)
            yield return LengthCure.OneStroke;
        if (SystematicOf(saw, length, strokes) != 0 && UpToGrid(RandomOf(saw, strokes)) <= allowed)
            yield return LengthCure.Calibrate;
        if (UpToGrid((double)saw.KerfError.Nanometers) <= allowed)
            yield return LengthCure.Stop;
        yield return LengthCure.MachiningAllowance;
    }

    private static double SystematicOf(SawAccuracy saw, Length length, long strokes) =>
        (double)saw.IndexBiasPerStroke.Nanometers * strokes + (double)saw.ScaleErrorPpm * length.Nanometers / 1_000_000;

    private static double RandomOf(SawAccuracy saw, long strokes)
    {
        var (stroke, kerf) = ((double)saw.IndexErrorPerStroke.Nanometers, (double)saw.KerfError.Nanometers);
        return Math.Sqrt(strokes * stroke * stroke + kerf * kerf);
    }

    private static Length UpToGrid(double nanometers) => new((long)Math.Ceiling((nanometers - 1e-3) / Grid) * Grid);

    /// <summary>The grid point at or below a length, but not nil.</summary>
    internal static Length DownToGrid(Length length) => new(Math.Max(1, length.Nanometers / Grid) * Grid);

    internal static Length ToGrid(double nanometers) => new((long)Math.Round(nanometers / Grid, 0, MidpointRounding.ToEven) * Grid);
}
