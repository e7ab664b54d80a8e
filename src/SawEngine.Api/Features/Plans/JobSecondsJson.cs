namespace SawEngine.Api.Features.Plans;

/// <summary>Where the time of a job goes, in seconds.</summary>
public sealed record JobSecondsJson
{
    /// <summary>Set-ups before it.</summary>
    public required decimal SetUp { get; init; }

    /// <summary>Loading bars.</summary>
    public required decimal Load { get; init; }

    /// <summary>Blade in the work.</summary>
    public required decimal Cut { get; init; }

    /// <summary>Index, clamp, approach and retract.</summary>
    public required decimal Cycle { get; init; }

    /// <summary>Swiveling; absent where there is none.</summary>
    public decimal? AngleChange { get; init; }

    /// <summary>Removing, deburring, marking and stacking pieces.</summary>
    public required decimal Unload { get; init; }

    /// <summary>Marking and racking remnants, binning scrap.</summary>
    public required decimal Remainder { get; init; }

    /// <summary>Sum of the parts.</summary>
    public required decimal Total { get; init; }
}
