using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Accuracy;

namespace SawEngine.Api.Features.CuttingData;

/// <summary>How exactly the saw cuts the length: |b m + s L| + sqrt(m e² + k²) after m strokes, with bias b and error e of a stroke, error s of the scale and k of the kerf.</summary>
public sealed record LengthAccuracyJson
{
    /// <summary>The largest error to either side in the length unit of the request, rounded up to 1.27 µm (0.00005 in).</summary>
    [LengthRange(Limits.Amount)]
    public required decimal LargestError { get; init; }

    /// <summary>What of it is systematic, positive where pieces come out long, rounded to 1.27 µm.</summary>
    [LengthRange(-Limits.Amount, Limits.Amount)]
    public required decimal SystematicError { get; init; }

    /// <summary>What the tolerance allows to either side of its middle; absent where none is ordered.</summary>
    [LengthRange]
    public decimal? Allowed { get; init; }

    /// <summary>Whether the tolerance is held; absent where none is ordered.</summary>
    public bool? IsHeld { get; init; }

    /// <summary>What would hold it, most likely first; absent where it is held or none is ordered.</summary>
    [KnownValues(typeof(LengthCure))]
    public IReadOnlyList<string>? Cures { get; init; }

    internal static LengthAccuracyJson Of(LengthAccuracy accuracy, LengthScale scale) => new()
    {
        LargestError = scale.Write(accuracy.Largest),
        SystematicError = scale.Write(accuracy.Systematic),
        Allowed = accuracy.Ordered is { } ordered ? scale.Write(ordered) : null,
        IsHeld = accuracy.IsHeld,
        Cures = accuracy.Cures.Count == 0 ? null : [.. accuracy.Cures.Select(cure => WireEnum.Text(cure))],
    };
}
