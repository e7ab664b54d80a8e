namespace SawEngine.Core.Scheduling;

/// <summary>A span of uninterrupted work, in seconds since the start of the plan.</summary>
/// <param name="Start">First second.</param>
/// <param name="Finish">Second after the last; the work in it is rounded up to whole seconds.</param>
/// <param name="Steps">How many steps of the job are done in it.</param>
/// <param name="OperatorId">Whose hands are busy with it: a crane load where there are operators; else null.</param>
/// <param name="CraneId">The crane that loads; the span is then that one step. Else null.</param>
public sealed record WorkSpan(long Start, long Finish, int Steps, string? OperatorId = null, string? CraneId = null);
