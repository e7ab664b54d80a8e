using SawEngine.Core.Scheduling;
using static SawEngine.Core.Tests.Scheduling.ByHand.Edit;

namespace SawEngine.Core.Tests.Scheduling.ByHand;

/// <summary>A job that two others follow, one of them on another saw, and one that follows what cannot be made.</summary>
internal static class PrecedenceByHand
{
    private static readonly ScheduleProblem Problem = new()
    {
        Saws = [Saw("S1"), Saw("S2")],
        Jobs =
        [
            Job("J1", "S1", 3), Job("J2", "S2", 1, "J1"), Job("J3", "S2", 1, "J1", "J2"), Job("J4", "S1", 1, "J9"), new() { JobId = "J9", Options = [] },
        ],
        Deliveries = [],
    };

    // The set-up of J2 does not wait for J1. 30 + 10 + 10 s of work at 2, two set-ups of 5 s at 3.
    private static readonly Schedule Good = Of(
        100 + 30,
        Placed("J1", "S1", 1, [new("section", 0, 5)], new WorkSpan(5, 35, 3)),
        Placed("J2", "S2", 1, [new("section", 0, 5)], new WorkSpan(35, 45, 1)),
        Placed("J3", "S2", 2, [], new WorkSpan(45, 55, 1))) with
    {
        Unscheduled = [new("J4", UnscheduledReason.PredecessorUnscheduled), new("J9", UnscheduledReason.NoSaw)],
    };

    public static HandCase Case { get; } = new("precedence", Problem, Good,
    [
        new("start before the other is done", s => s.Works("J2", new WorkSpan(34, 44, 1)), ScheduleRule.WorkBeforePredecessor),
        new("job after one that is left out", s => s with { Jobs = [s.Jobs[0], Placed("J4", "S1", 2, [], new WorkSpan(35, 45, 1)), .. s.Jobs.Skip(1)], Unscheduled = [s.Unscheduled[1]] }, ScheduleRule.PredecessorLeftOut),
        Mutant.Of("left out for a predecessor that is there", p => p.Job("J4", job => job with { After = ["J1"] }), ScheduleRule.ReasonWrong),
        Mutant.Of("left out for a predecessor though frozen", p => p.Job("J4", job => job with { Frozen = new("S1", 10) }), ScheduleRule.ReasonWrong),
        new("left out for want of a saw that is there", s => s with { Unscheduled = [new("J4", UnscheduledReason.NoSaw), s.Unscheduled[1]] }, ScheduleRule.ReasonWrong),
        new("left out as frozen though free", s => s with { Unscheduled = [s.Unscheduled[0], new("J9", UnscheduledReason.FrozenSawCannotTakeIt)] }, ScheduleRule.ReasonWrong),
        new("left out for its cuts though they are short", s => s with { Unscheduled = [s.Unscheduled[0], new("J9", UnscheduledReason.CutExceedsBladeLife)] }, ScheduleRule.ReasonWrong),
        new("left out for want of operators where none are needed", s => s with { Unscheduled = [s.Unscheduled[0], new("J9", UnscheduledReason.NoOneToSetUp)] }, ScheduleRule.ReasonWrong),
    ]);

    private static ScheduleSaw Saw(string id) => new() { SawId = id, Windows = [new(0, 300)], InitialState = new("round", "A", "B"), SetUpTimes = new(5, 0, 0) };

    private static ScheduleJob Job(string id, string sawId, int cuts, params string[] after) => new()
    {
        JobId = id,
        After = after,
        Options = [new() { SawId = sawId, SetUp = new("flat", "A", "B"), Steps = [new(10_000, cuts)], CostMicrosPerSecond = 2, SetUpCostMicrosPerSecond = 3 }],
    };
}
