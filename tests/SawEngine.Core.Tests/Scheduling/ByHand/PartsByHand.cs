using SawEngine.Core.Scheduling;
using static SawEngine.Core.Tests.Scheduling.ByHand.Edit;

namespace SawEngine.Core.Tests.Scheduling.ByHand;

/// <summary>A job in two parts on two saws, another after it, and what it costs to have moved them.</summary>
internal static class PartsByHand
{
    private static readonly ScheduleProblem Problem = new()
    {
        Saws = [Saw("S1"), Saw("S2")],
        Jobs =
        [
            new() { JobId = "J", MostParts = 2, Options = [Option("S1", new(10_000, 1), new(10_000, 5)), Option("S2", new StepRun(12_000, 6))] },
            new() { JobId = "K", After = ["J"], Options = [Option("S1", new StepRun(10_000, 1)), Option("S2", new StepRun(10_000, 1))] },
        ],
        Deliveries = [new("D", 30, 3600, ["J"])],
        Previous = new([new("J", "S1", 7200), new("K", "S1", 40)]) { CostMicrosPerHourMoved = 10, CostMicrosPerSawChange = 7 },
        MakespanCostMicrosPerSecond = 1,
    };

    // The first two steps on S2, the other four on S1, done at 40: 10 s late at 1 a second. The first part is 2 h earlier than it was and on another saw.
    // 24 + 40 + 10 s of work at 2, all done at 50.
    private static readonly Schedule Good = Of(
        148 + 10 + 20 + 7 + 50,
        Placed("J", "S1", 1, [], new WorkSpan(0, 40, 4)) with { FirstStep = 2 },
        Placed("K", "S1", 2, [], new WorkSpan(40, 50, 1)),
        Placed("J", "S2", 1, [], new WorkSpan(0, 24, 2)));

    public static HandCase Case { get; } = new("parts", Problem, Good,
    [
        new("a part too many", s => s with { Jobs = [s.Jobs[0] with { Work = [new(0, 20, 2)] }, s.Jobs[0] with { FirstStep = 4, Sequence = 2, Work = [new(20, 40, 2)] }, s.Jobs[1] with { Sequence = 3 }, s.Jobs[2]] }, ScheduleRule.TooManyParts),
        new("a step in both parts", s => s with { Jobs = [s.Jobs[0], s.Jobs[1], s.Jobs[2] with { Work = [new(0, 36, 3)] }] }, ScheduleRule.PartSteps),
        new("a step in no part", s => s with { Jobs = [s.Jobs[0], s.Jobs[1], s.Jobs[2] with { Work = [new(0, 12, 1)] }] }, ScheduleRule.PartSteps),
        new("last step left out", s => s with { Jobs = [s.Jobs[0] with { Work = [new(0, 30, 3)] }, s.Jobs[1], s.Jobs[2]] }, ScheduleRule.PartSteps),
        new("first part left out", s => s with { Jobs = [s.Jobs[0], s.Jobs[1]] }, ScheduleRule.WorkSteps),
        new("job after the first part only", s => s with { Jobs = [s.Jobs[0], s.Jobs[2], s.Jobs[1] with { SawId = "S2", Work = [new(24, 34, 1)] }] }, ScheduleRule.WorkBeforePredecessor),
        Mutant.Of("job that stays whole", p => p.Job("J", job => job with { MostParts = 1 }), ScheduleRule.JobListedTwice, ScheduleRule.WorkSteps),
        new("nothing for having moved", s => s with { CostMicros = 208 }, ScheduleRule.CostWrong),
        new("nothing for the makespan", s => s with { CostMicros = 185 }, ScheduleRule.CostWrong),
        new("nothing for being late", s => s with { CostMicros = 225 }, ScheduleRule.CostWrong),
    ]);

    private static ScheduleSaw Saw(string id) => new() { SawId = id, Windows = [new(0, 300)], InitialState = new("round", "A", "B"), SetUpTimes = new(0, 0, 0) };

    private static JobOption Option(string sawId, params StepRun[] steps) => new() { SawId = sawId, SetUp = new("round", "A", "B"), Steps = steps, CostMicrosPerSecond = 2 };
}
