namespace SawEngine.Api.Features.Plans;

/// <summary>Cutting data of a job.</summary>
public sealed record CuttingJson
{
    /// <summary>Blade speed in m/min.</summary>
    public required decimal BladeSpeedMPerMin { get; init; }

    /// <summary>Blade speed in ft/min; with inches only.</summary>
    public decimal? BladeSpeedFtPerMin { get; init; }

    /// <summary>Cutting rate in cm2/min, over the cut.</summary>
    public required decimal CuttingRateCm2PerMin { get; init; }

    /// <summary>Cutting rate in in2/min; with inches only.</summary>
    public decimal? CuttingRateIn2PerMin { get; init; }

    /// <summary>Blade feed (descent) in mm/min, over the cut.</summary>
    public required decimal BladeFeedMmPerMin { get; init; }

    /// <summary>Blade feed in in/min; with inches only.</summary>
    public decimal? BladeFeedInPerMin { get; init; }

    /// <summary>The rule that sets the rate. Known: gradeRate, toothLoad, bladeFeed, power.</summary>
    public required string LimitedBy { get; init; }

    /// <summary>Teeth in the work.</summary>
    public required TeethInWorkJson TeethInWork { get; init; }

    /// <summary>Time of a square cut in seconds.</summary>
    public required decimal SecondsPerCut { get; init; }

    /// <summary>Mean time of a mitered cut in seconds; absent where there is none.</summary>
    public decimal? SecondsPerMiteredCut { get; init; }
}
