using System.ComponentModel.DataAnnotations;
using SawEngine.Core.Times;

namespace SawEngine.Api.Features.Plans;

/// <summary>Where the time of a job goes, in seconds.</summary>
public sealed record JobSecondsJson
{
    /// <summary>Set-ups before it.</summary>
    [Range(0, int.MaxValue)]
    public required decimal SetUp { get; init; }

    /// <summary>Loading bars.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Load { get; init; }

    /// <summary>Blade in the work.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Cut { get; init; }

    /// <summary>Index, clamp, approach and retract.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Cycle { get; init; }

    /// <summary>Swiveling; absent where there is none.</summary>
    [Range(0, int.MaxValue)]
    public decimal? AngleChange { get; init; }

    /// <summary>Removing, deburring, marking and stacking pieces.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Unload { get; init; }

    /// <summary>Marking and racking remnants, binning scrap.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Remainder { get; init; }

    /// <summary>Sum of the parts.</summary>
    [Range(0, int.MaxValue)]
    public required decimal Total { get; init; }

    /// <summary>Times by what they are spent on.</summary>
    public static JobSecondsJson Of(long setUpSeconds, TimeParts time) => new()
    {
        SetUp = setUpSeconds,
        Load = time.Load,
        Cut = time.Cut,
        Cycle = time.Index + time.Clamp + time.Approach,
        AngleChange = time.Swivel == 0 ? null : time.Swivel,
        Unload = time.Unload,
        Remainder = time.Remainder,
        Total = setUpSeconds + time.Total,
    };
}
