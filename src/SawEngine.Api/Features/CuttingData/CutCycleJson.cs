using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core.Times;

namespace SawEngine.Api.Features.CuttingData;

/// <summary>One cycle of the saw, of equal pieces one after the other, in seconds.</summary>
public sealed record CutCycleJson
{
    /// <summary>Strokes of the bar feed for the length and the kerf along the bar.</summary>
    [Range(1, long.MaxValue)]
    public required long Strokes { get; init; }

    /// <summary>Strokes of the bar feed, as far as they do not fall into the retract.</summary>
    [Range(0, Limits.Amount)]
    public required decimal Index { get; init; }

    /// <summary>Clamping and unclamping.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Clamp { get; init; }

    /// <summary>Approach, overtravel and retract of the blade.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Approach { get; init; }

    /// <summary>Blade in the work.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Cut { get; init; }

    /// <summary>Removing, deburring, marking and stacking the pieces.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Unload { get; init; }

    /// <summary>Sum of the parts.</summary>
    [Range(0, Limits.Amount)]
    public required decimal Total { get; init; }

    internal static CutCycleJson Of(long strokes, TimeParts parts) => new()
    {
        Strokes = strokes,
        Index = parts.Index,
        Clamp = parts.Clamp,
        Approach = parts.Approach,
        Cut = parts.Cut,
        Unload = parts.Unload,
        Total = parts.Total,
    };
}
