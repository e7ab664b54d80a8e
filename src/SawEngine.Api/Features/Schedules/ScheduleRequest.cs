namespace SawEngine.Api.Features.Schedules;

/// <summary>Jobs to be put in order on the saws of a shop.</summary>
public sealed record ScheduleRequest : ScheduleProblemRequest;
