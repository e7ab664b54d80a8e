namespace SawEngine.Api.Features.Schedules;

/// <summary>Rules of a request for a schedule: those of its jobs and their shop.</summary>
public sealed class ScheduleRequestRules : ScheduleProblemRequestRules<ScheduleRequest>;
