using SawEngine.Core.Scheduling;
using static SawEngine.Core.Tests.Scheduling.ByHand.Edit;

namespace SawEngine.Core.Tests.Scheduling.ByHand;

/// <summary>A saw that runs by itself over its breaks: one bar, two cuts, 60 s.</summary>
internal static class UnattendedByHand
{
    private static readonly ScheduleProblem Problem = new()
    {
        Saws =
        [
            new()
            {
                SawId = "S",
                Windows = [new(0, 100), new(200, 300), new(400, 500), new(520, 700)],
                Unattended = new([new(100, 200), new(300, 400), new(500, 520)], Bars: 1, Cuts: 2, LongestSeconds: 60),
                InitialState = new("round", "A", "B"),
                SetUpTimes = new(Section: 20, GradeGroup: 10, Blade: 0),
            },
        ],
        Jobs =
        [
            Job(
                "J1", "round", "A", true,
                new(10_000, 1, 0, StepKind.Load), new(30_000, 2), new(10_000, 1, 0, StepKind.Load), new(20_000, 1), new(5_000, 1, 0, StepKind.Handling)),
            Job("J2", "flat", "A", false, new StepRun(50_000, 1)),
            Job("J3", "flat", "A", true, new StepRun(40_000, 3)),
            Job("J4", "flat", "B", true, new StepRun(50_000, 3)),
        ],
        Deliveries = [],
    };

    // J1: load 50-60, cuts 60-90 and 90-120, load 120-130, cut 130-150: from 100 on two cuts and a bar, up to 150. What is put away waits for 200.
    // J3: cuts 275-315 and 315-355, both from 300 on; the third would end at 395, after 360.
    // J4: cuts 450-500, 500-550 and 550-600: one in the window from 500 on, and out of it again.
    // 105 + 50 + 120 + 150 s of work at 2, 20 + 10 s of set-up at 3.
    private static readonly Schedule Good = Of(
        850 + 90,
        Placed("J1", "S", 1, [], new(50, 150, 5), new(200, 205, 1)),
        Placed("J2", "S", 2, [new("section", 205, 225)], new WorkSpan(225, 275, 1)),
        Placed("J3", "S", 3, [], new(275, 355, 2), new(400, 440, 1)),
        Placed("J4", "S", 4, [new("gradeGroup", 440, 450)], new WorkSpan(450, 600, 3)));

    public static HandCase Case { get; } = new("unattended runs", Problem, Good,
    [
        Mutant.Of("job that must not run unattended", p => p.Option("J1", option => option with { MayRunUnattended = false }), ScheduleRule.UnattendedNotAllowed),
        Mutant.Of("one bar too many", p => Runs(p, runs => runs with { Bars = 0 }), ScheduleRule.UnattendedBars),
        Mutant.Of("one cut too many", p => Runs(p, runs => runs with { Cuts = 1 }), ScheduleRule.UnattendedCuts),
        Mutant.Of("longer than it may", p => Runs(p, runs => runs with { LongestSeconds = 54 }), ScheduleRule.UnattendedTooLong),
        Mutant.Of("saw that never runs by itself", p => p.Saw("S", saw => saw with { Unattended = null }), ScheduleRule.WorkOutsideShift),
        Mutant.Of("stop by itself of a job that runs through", p => p.Option("J3", option => option with { MayPause = false }), ScheduleRule.UnattendedNotAllowed, ScheduleRule.WorkPaused),
        Mutant.Of("job that runs through attended and on by itself", p => p.Option("J4", option => option with { MayPause = false }), ScheduleRule.UnattendedNotAllowed),
        new("something put away by nobody", s => s.Works("J1", new WorkSpan(50, 155, 6)), ScheduleRule.UnattendedManualStep),
        Mutant.Of("heavy bar that no crane reaches, loaded by nobody", p => p.Option("J1", option => option with { Steps = [.. option.Steps.Take(2), option.Steps[2] with { Kind = StepKind.CraneLoad }, .. option.Steps.Skip(3)] }), ScheduleRule.UnattendedManualStep),
        new("start by itself", s => s.Works("J3", new(275, 355, 2), new(390, 430, 1)), ScheduleRule.UnattendedStart),
        new("set-up by nobody", s => s.SetsUp("J4", new ScheduledSetUp("gradeGroup", 500, 510)).Works("J4", new WorkSpan(520, 670, 3)), ScheduleRule.SetUpOutsideShift),
        new("work that stops for nothing where it is attended again", s => s.Works("J4", new(450, 550, 2), new(560, 610, 1)), ScheduleRule.WorkSplit),
        new("work beyond the calendar", s => s.Works("J4", new WorkSpan(551, 701, 3)), ScheduleRule.WorkOutsideShift),
    ]);

    private static ScheduleProblem Runs(ScheduleProblem problem, Func<UnattendedRuns, UnattendedRuns> change) =>
        problem.Saw("S", saw => saw with { Unattended = change(saw.Unattended!) });

    private static ScheduleJob Job(string id, string section, string gradeGroup, bool mayRunUnattended, params StepRun[] steps) => new()
    {
        JobId = id,
        Options =
        [
            new()
            {
                SawId = "S",
                SetUp = new(section, gradeGroup, "B"),
                Steps = steps,
                MayRunUnattended = mayRunUnattended,
                CostMicrosPerSecond = 2,
                SetUpCostMicrosPerSecond = 3,
            },
        ],
    };
}
