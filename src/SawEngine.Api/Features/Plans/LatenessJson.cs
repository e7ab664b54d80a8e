using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Api.Features.Plans;

/// <summary>Why something promised is late, and what would cure it.</summary>
public sealed record LatenessJson
{
    private const decimal SecondsPerHour = 3600m;
    private const decimal MicrosPerUnit = 1_000_000m;
    private const int HourDecimals = 4;
    private const int MoneyDecimals = 2;

    /// <summary>The job that is finished last.</summary>
    public required string JobId { get; init; }

    /// <summary>Cost of the hours late.</summary>
    [Range(0, Limits.Amount)]
    public required decimal Cost { get; init; }

    /// <summary>Hours, to 4 decimals, that it would be late even if that job had its quickest saw to itself: no order of the jobs makes it less late. In a plan its bars stay as they are nested.</summary>
    [Range(0, int.MaxValue)]
    public required decimal LateHoursAlone { get; init; }

    /// <summary>What the time from the start of the plan to the job's end is spent on, the longest first; the hours add up to it.</summary>
    public required IReadOnlyList<LatenessCauseJson> Causes { get; init; }

    /// <summary>What would make it less late, each by itself with all else in its order, the best first; none where nothing that was tried does.</summary>
    public required IReadOnlyList<LatenessCureJson> Cures { get; init; }

    internal static LatenessJson Of(LateDelivery late) => new()
    {
        JobId = late.JobId,
        Cost = Money(late.CostMicros),
        LateHoursAlone = Hours(late.SecondsLateAlone),
        Causes = [.. late.Causes.Select(LatenessCauseJson.Of)],
        Cures = [.. late.Cures.Select(LatenessCureJson.Of)],
    };

    internal static decimal Hours(long seconds) => Math.Round(seconds / SecondsPerHour, HourDecimals, MidpointRounding.ToEven);

    internal static decimal Money(long micros) => Math.Round(micros / MicrosPerUnit, MoneyDecimals, MidpointRounding.ToEven);
}
