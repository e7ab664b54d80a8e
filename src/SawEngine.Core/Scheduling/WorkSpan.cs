namespace SawEngine.Core.Scheduling;

/// <summary>A span of uninterrupted work in one window, in seconds since the start of the plan.</summary>
/// <param name="Start">First second.</param>
/// <param name="Finish">Second after the last; the work in it is rounded up to whole seconds.</param>
/// <param name="Steps">How many steps of the job are done in it.</param>
public sealed record WorkSpan(long Start, long Finish, int Steps);
