using SawEngine.Api.Wire;
using SawEngine.Core.CuttingData;
using SawEngine.Core.Nesting;
using SawEngine.Core.Saws;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.CuttingData;

/// <summary>A saw that cannot make a cut.</summary>
public sealed record CutNotPossibleJson
{
    /// <summary>Cut.</summary>
    public required string CutId { get; init; }

    /// <summary>Saw.</summary>
    public required string SawId { get; init; }

    /// <summary>The blade with which it cannot; absent where that goes for all of the saw's.</summary>
    public string? BladeId { get; init; }

    /// <summary>Why, for a program.</summary>
    [KnownValues(
        SawFit.Capacity, SawFit.MiterRange, SawFit.MiterPlane, SawFit.CompoundMiter, BundleFit.TooManyBars, BundleFit.SectionNotBundled, BundleFit.NoHoldDown,
        BundleFit.TooLarge, ObstacleCodes.NoBlade, ObstacleCodes.TooFewTeeth,
        ObstacleCodes.BladeNotOnSaw, ObstacleCodes.NotEnoughPower, ObstacleCodes.TakesTooLong, ObstacleCodes.NoMaterial, UnplacedReason.PieceTooShort, UnplacedReason.PieceTooLong, UnscheduledReason.CutExceedsBladeLife)]
    public required string Reason { get; init; }

    /// <summary>Why, for a person.</summary>
    public required string Detail { get; init; }

    /// <summary>The caller's marks on the cut, unchanged.</summary>
    public IReadOnlyDictionary<string, string>? Attributes { get; init; }
}
