using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Plans;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Why a job, or a part of one, is where it is.</summary>
public sealed record JobReasonsJson
{
    /// <summary>Id of the job.</summary>
    public required string JobId { get; init; }

    /// <summary>The first of its steps that is done there, from 1.</summary>
    [Range(1, int.MaxValue)]
    public required int FirstStep { get; init; }

    /// <summary>Why it does not start earlier on its saw.</summary>
    public required JobWaitJson WaitsFor { get; init; }

    /// <summary>Why it is on its saw.</summary>
    public required SawChoiceJson SawChoice { get; init; }

    internal static JobReasonsJson Of(JobExplanation job) => new()
    {
        JobId = job.JobId,
        FirstStep = job.FirstStep + 1,
        WaitsFor = JobWaitJson.Of(job.WaitsFor),
        SawChoice = SawChoiceJson.Of(job),
    };
}
