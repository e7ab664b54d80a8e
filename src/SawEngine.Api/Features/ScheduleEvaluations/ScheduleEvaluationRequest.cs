using System.Text.Json.Serialization;
using SawEngine.Api.Features.Schedules;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>A request for a schedule, and a schedule for it that someone edited by hand.</summary>
public sealed record ScheduleEvaluationRequest : ScheduleProblemRequest
{
    /// <summary>The edited schedule.</summary>
    [JsonPropertyOrder(1)]
    public required EditedScheduleJson Schedule { get; init; }

    /// <summary>Whether the engine makes its own schedule to compare with; effort and timeLimitSeconds are for this one.</summary>
    [JsonPropertyOrder(2)]
    public bool Compare { get; init; } = true;
}
