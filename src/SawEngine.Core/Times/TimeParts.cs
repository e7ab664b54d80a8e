namespace SawEngine.Core.Times;

/// <summary>Time by what it is spent on, in seconds. The parts add up to the total exactly.</summary>
/// <param name="Load">Pulling bars from the rack and loading them.</param>
/// <param name="Index">Strokes of the bar feed.</param>
/// <param name="Clamp">Clamping and unclamping.</param>
/// <param name="Approach">Approach, overtravel and retract of the blade.</param>
/// <param name="Swivel">Swiveling to other angles.</param>
/// <param name="Cut">The blade in the work.</param>
/// <param name="Unload">Removing, deburring, marking and stacking pieces.</param>
/// <param name="Remainder">Marking and racking remnants, binning scrap.</param>
public readonly record struct TimeParts(
    decimal Load, decimal Index, decimal Clamp, decimal Approach, decimal Swivel, decimal Cut, decimal Unload, decimal Remainder)
{
    /// <summary>No time; the default value.</summary>
    public static readonly TimeParts Zero;

    /// <summary>Sum of the parts.</summary>
    public decimal Total => Load + Index + Clamp + Approach + Swivel + Cut + Unload + Remainder;

    /// <summary>Sum, part by part.</summary>
    public static TimeParts operator +(TimeParts a, TimeParts b) => new(
        a.Load + b.Load,
        a.Index + b.Index,
        a.Clamp + b.Clamp,
        a.Approach + b.Approach,
        a.Swivel + b.Swivel,
        a.Cut + b.Cut,
        a.Unload + b.Unload,
        a.Remainder + b.Remainder);

    /// <summary>Multiple, part by part.</summary>
    public static TimeParts operator *(TimeParts a, int factor) => new(
        a.Load * factor,
        a.Index * factor,
        a.Clamp * factor,
        a.Approach * factor,
        a.Swivel * factor,
        a.Cut * factor,
        a.Unload * factor,
        a.Remainder * factor);
}
