using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Api.Features.Plans;

/// <summary>Why a job does not start earlier on its saw.</summary>
public sealed record JobWaitJson
{
    /// <summary>What it waits for: nothing but the start of the plan, its release, the start that it is frozen at, a job that it must follow, the job before it on the saw, somebody to attend the saw for long enough, or an operator or crane that is busy elsewhere.</summary>
    [KnownValues(typeof(WaitKind))]
    public required string Kind { get; init; }

    /// <summary>The job that it waits for.</summary>
    public string? JobId { get; init; }

    internal static JobWaitJson Of(JobWait wait) => new() { Kind = WireEnum.Text(wait.Kind), JobId = wait.JobId };
}
