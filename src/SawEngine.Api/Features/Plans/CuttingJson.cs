using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core.CuttingData;

namespace SawEngine.Api.Features.Plans;

/// <summary>Cutting data of a job.</summary>
public sealed record CuttingJson
{
    /// <summary>Blade speed in m/min.</summary>
    [Range(0, int.MaxValue)]
    public required decimal BladeSpeedMPerMin { get; init; }

    /// <summary>Blade speed in ft/min; with inches only.</summary>
    [Range(0, int.MaxValue)]
    public decimal? BladeSpeedFtPerMin { get; init; }

    /// <summary>Cutting rate in cm2/min, over the cut.</summary>
    [Range(0, int.MaxValue)]
    public required decimal CuttingRateCm2PerMin { get; init; }

    /// <summary>Cutting rate in in2/min; with inches only.</summary>
    [Range(0, int.MaxValue)]
    public decimal? CuttingRateIn2PerMin { get; init; }

    /// <summary>Blade feed (descent) in mm/min, over the cut.</summary>
    [Range(0, int.MaxValue)]
    public required decimal BladeFeedMmPerMin { get; init; }

    /// <summary>Blade feed in in/min; with inches only.</summary>
    [Range(0, int.MaxValue)]
    public decimal? BladeFeedInPerMin { get; init; }

    /// <summary>Highest power that the motor gives during the cut, in kW.</summary>
    [Range(0, int.MaxValue)]
    public required decimal PowerKw { get; init; }

    /// <summary>That power in mechanical horsepower; with inches only.</summary>
    [Range(0, int.MaxValue)]
    public decimal? PowerHp { get; init; }

    /// <summary>What holds the blade feed back over most of the cut.</summary>
    [KnownValues(typeof(CutLimit))]
    public required string LimitedBy { get; init; }

    /// <summary>Teeth in the work.</summary>
    public required TeethInWorkJson TeethInWork { get; init; }

    /// <summary>Time of a square cut in seconds.</summary>
    [Range(0, int.MaxValue)]
    public required decimal SecondsPerCut { get; init; }

    /// <summary>Time of the slowest mitered cut in seconds; absent where there is none.</summary>
    [Range(0, int.MaxValue)]
    public decimal? SecondsPerMiteredCut { get; init; }
}
