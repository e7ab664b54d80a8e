using SawEngine.Core.Scheduling;
using static SawEngine.Core.Tests.Scheduling.ByHand.Edit;

namespace SawEngine.Core.Tests.Scheduling.ByHand;

/// <summary>A job that is running, frozen ones that start in time or as soon as they can, and a free one after them.</summary>
internal static class FrozenByHand
{
    private static readonly TimeWindow[] Shifts = [new(0, 100), new(200, 300), new(400, 500)];

    private static readonly ScheduleProblem Problem = new()
    {
        Saws = [Saw("S1", "B1") with { RemainingBladeLife = 250_000_000 }, Saw("S2", "B9")],
        Jobs =
        [
            Job("F1", "S1", "round", new("S1", -20), new StepRun(15_000, 2, 100_000_000)) with { Release = 500, After = ["N1"] },
            Job("F2", "S1", "flat", new("S1", 50), new StepRun(30_000, 2)),
            Job("F3", "S2", "flat", new("S2", 90), new StepRun(20_000, 1)),
            Job("F4", "S2", "flat", new("S2", 215), new StepRun(50_000, 2)).WithoutPause(),
            Job("F5", "S2", "flat", new("S2", 460), new StepRun(10_000, 1)),
            Job("N1", "S1", "flat", null, new StepRun(20_000, 1)),
        ],
        Deliveries = [],
    };

    // F1 runs with the mounted blade, whatever it was called, and needs no set-up; its release and what it follows are past.
    // F2 is set up before its time, starts in time and pauses over the break. F3 has 10 s left of the shift at 90, and takes 20.
    // F4 could start at 220, but has no 100 s until the break. F5 waits for it.
    // 30 + 60 + 20 + 20 + 100 + 10 s of work at 2, two set-ups of 10 s at 3.
    private static readonly Schedule Good = Of(
        480 + 60,
        Placed("F1", "S1", 1, [], new WorkSpan(0, 30, 2)),
        Placed("F2", "S1", 2, [new("section", 30, 40)], new(50, 80, 1), new(200, 230, 1)),
        Placed("N1", "S1", 3, [], new WorkSpan(230, 250, 1)),
        Placed("F3", "S2", 1, [new("section", 80, 90)], new WorkSpan(200, 220, 1)),
        Placed("F4", "S2", 2, [], new WorkSpan(400, 500, 2)),
        Placed("F5", "S2", 3, [], new WorkSpan(600, 610, 1)));

    public static HandCase Case { get; } = new("frozen jobs", Problem, Good,
    [
        Mutant.Of("frozen on another saw", p => p.Job("F2", job => job with { Frozen = new("S2", 50) }), ScheduleRule.FrozenSaw),
        Mutant.Of("order of frozen jobs", p => p.Job("N1", job => job with { Frozen = new("S1", 40) }), ScheduleRule.FrozenOrder),
        Mutant.Of("free job before a frozen one", p => p.Job("F2", job => job with { Frozen = null }).Job("N1", job => job with { Frozen = new("S1", 230) }), ScheduleRule.FrozenOrder),
        Mutant.Of("start before its time", p => p.Job("F2", job => job with { Frozen = new("S1", 51) }), ScheduleRule.FrozenStart),
        new("start after its time", s => s.Works("F2", new(51, 81, 1), new(200, 230, 1)), ScheduleRule.FrozenStart),
        new("running job that waits", s => s.Works("F1", new WorkSpan(1, 31, 2)).SetsUp("F2", new ScheduledSetUp("section", 31, 41)), ScheduleRule.FrozenStart),
        new("set-up that comes too late", s => s.SetsUp("F3", new ScheduledSetUp("section", 210, 220)).Works("F3", new WorkSpan(220, 240, 1)), ScheduleRule.FrozenStart),
        new("start after the break though there was room before it", s => s.Works("F3", new WorkSpan(200, 210, 1)), ScheduleRule.FrozenStart) { Against = p => p.Option("F3", option => option with { Steps = [new(10_000, 1)] }) },
        new("run through after the break though there was room before it", s => s.Works("F4", new WorkSpan(400, 480, 2)), ScheduleRule.FrozenStart) { Against = p => p.Option("F4", option => option with { Steps = [new(40_000, 2)] }) },
        new("set-up for a running job", s => s.SetsUp("F1", new ScheduledSetUp("section", 0, 10)).Works("F1", new WorkSpan(10, 40, 2)).SetsUp("F2", new ScheduledSetUp("section", 40, 50)), ScheduleRule.SetUpUnneeded),
        Mutant.Of("running job whose blade does not last", p => p.Saw("S1", saw => saw with { RemainingBladeLife = 150_000_000 }), ScheduleRule.BladeWornOut),
        Mutant.Of("job that is not running yet", p => p.Job("F1", job => job with { Frozen = new("S1", 1) }), ScheduleRule.FrozenStart, ScheduleRule.SetUpMissing),
    ]);

    private static ScheduleSaw Saw(string id, string bladeId) => new()
    {
        SawId = id,
        Windows = [.. Shifts, new(600, 700)],
        InitialState = new("tube", "A", bladeId),
        SetUpTimes = new(Section: 10, GradeGroup: 0, Blade: 5),
    };

    private static ScheduleJob Job(string id, string sawId, string section, FrozenPlace? frozen, StepRun steps) => new()
    {
        JobId = id,
        Frozen = frozen,
        Options = [new() { SawId = sawId, SetUp = new(section, "A", "B9"), Steps = [steps], CostMicrosPerSecond = 2, SetUpCostMicrosPerSecond = 3 }],
    };

    private static ScheduleJob WithoutPause(this ScheduleJob job) => job with { Options = [job.Options[0] with { MayPause = false }] };
}
