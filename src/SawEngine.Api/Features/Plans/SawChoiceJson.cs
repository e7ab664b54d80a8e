using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Api.Features.Plans;

/// <summary>Why a job is on its saw.</summary>
public sealed record SawChoiceJson
{
    /// <summary>No other saw may take it (in a plan: none of those that its bars were nested for), it is frozen there, it costs no less elsewhere as the other jobs lie, or (`notImproved`) it would cost less elsewhere and the search did not find it.</summary>
    [KnownValues(typeof(SawReason))]
    public required string Reason { get; init; }

    /// <summary>The other saw on which it would cost least; absent where there is none, or it was not looked for.</summary>
    public string? OtherSawId { get; init; }

    /// <summary>By how much the schedule would cost more if the job ran there, the others in their order; negative where it would cost less.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public decimal? CostChange { get; init; }

    internal static SawChoiceJson Of(JobExplanation job) => new()
    {
        Reason = WireEnum.Text(job.SawReason),
        OtherSawId = job.OtherSawId,
        CostChange = job.OtherSawCostMicros is { } micros ? LatenessJson.Money(micros) : null,
    };
}
