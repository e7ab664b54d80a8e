using SawEngine.Core.Scheduling;
using static SawEngine.Core.Tests.Scheduling.ByHand.Edit;

namespace SawEngine.Core.Tests.Scheduling.ByHand;

/// <summary>Two operators for three saws, a saw each; a fourth saw without any.</summary>
internal static class OperatorsByHand
{
    private static readonly string[] Team = ["S1", "S2", "S3"];

    private static readonly ScheduleProblem Problem = new()
    {
        Saws = [Saw("S1"), Saw("S2") with { RemainingBladeLife = 500_000_000 }, Saw("S3"), Saw("S4")],
        Jobs =
        [
            Job("J1", "S1", "flat", new(10_000, 4)), Job("J2", "S2", "flat", new(10_000, 3, 250_000_000)), Job("J3", "S3", "flat", new(30_000, 3)),
            Job("J4", "S1", "tube", new(30_000, 2)), Job("J5", "S4", "flat", new(10_000, 1)),
        ],
        Deliveries = [],
        Operators = [new("O1", [new(0, 100), new(150, 300)], Team, 1), new("O2", [new(0, 200)], Team, 1)],
        WalkingSeconds = 5,
    };

    // Two saws may be at work up to 100 and from 150 to 200, one between. S1 to 50 and S2 to 45 keep S3 waiting until 45; O2 is there from 40 on.
    // J4 could go on at 90, but would be the second saw at 100: it waits for S3, which is done at 145.
    // 40 + 30 + 90 + 60 + 10 s of work at 2, five set-ups of 10 s and a blade change of 5 s at 3.
    private static readonly Schedule Good = Of(
        460 + 165,
        Placed("J1", "S1", 1, [new("section", 0, 10, "O1")], new WorkSpan(10, 50, 4)),
        Placed("J4", "S1", 2, [new("section", 50, 60, "O1")], new(60, 90, 1), new(145, 175, 1)),
        Placed("J2", "S2", 1, [new("section", 0, 10, "O2"), new("bladeWorn", 30, 35, "O2", ScheduleSaw.FullBladeLife)], new(10, 30, 2), new(35, 45, 1)),
        Placed("J3", "S3", 1, [new("section", 45, 55, "O2")], new WorkSpan(55, 145, 3)),
        Placed("J5", "S4", 1, [new("section", 0, 10)], new WorkSpan(10, 20, 1)));

    public static HandCase Case { get; } = new("operators", Problem, Good,
    [
        new("set-up by nobody", s => s.SetsUp("J1", new ScheduledSetUp("section", 0, 10)), ScheduleRule.OperatorMissing),
        new("set-up by somebody else", s => s.SetsUp("J1", new ScheduledSetUp("section", 0, 10, "O9")), ScheduleRule.OperatorMissing),
        new("worn blade changed by nobody", s => s.SetsUp("J2", new("section", 0, 10, "O2"), new("bladeWorn", 30, 35, null, ScheduleSaw.FullBladeLife)), ScheduleRule.OperatorMissing),
        new("operator at a saw without any", s => s.SetsUp("J5", new ScheduledSetUp("section", 0, 10, "O1")), ScheduleRule.OperatorUnneeded),
        new("hands on a saw that cuts", s => s.Works("J1", new WorkSpan(10, 50, 4, "O1")), ScheduleRule.OperatorUnneeded),
        new("two set-ups at a time", s => s.SetsUp("J2", new("section", 0, 10, "O1"), new("bladeWorn", 30, 35, "O2", ScheduleSaw.FullBladeLife)), ScheduleRule.OperatorBusy),
        new("no time to walk", s => s.SetsUp("J3", new ScheduledSetUp("section", 45, 55, "O1")).SetsUp("J4", new ScheduledSetUp("section", 50, 60, "O2")), ScheduleRule.OperatorBusy) { Against = p => p with { WalkingSeconds = 16 } },
        Mutant.Of("set-up after the shift", p => p with { Operators = [p.Operators[0] with { Windows = [new(0, 55), new(56, 100), new(150, 300)] }, p.Operators[1] with { MostSaws = 2 }] }, ScheduleRule.OperatorOffShift),
        new("more saws than are attended", s => s.Works("J4", new WorkSpan(60, 120, 2)), ScheduleRule.AttendanceExceeded),
        new("work when nobody is there", s => s.Works("J4", new(60, 90, 1), new(275, 305, 1)), ScheduleRule.AttendanceExceeded) { Against = p => p.Saw("S1", saw => saw with { Windows = [new(0, 400)] }) },
        new("job that runs through waits until somebody is there", s => s.Works("J4", new(60, 90, 1), new(210, 240, 1)), ScheduleRule.WorkPaused)
        {
            Against = p => p.Option("J4", option => option with { MayPause = false }) with { Operators = [p.Operators[0] with { Windows = [new(0, 100), new(210, 300)] }, p.Operators[1]] },
        },
        new("work that stops for nothing", s => s.Works("J1", new(10, 20, 1), new(20, 50, 3)), ScheduleRule.WorkSplit),
        Mutant.Of("waiting for nobody", p => p with { Operators = [] }, ScheduleRule.OperatorUnneeded, ScheduleRule.WorkSplit),
    ]);

    private static ScheduleSaw Saw(string id) => new()
    {
        SawId = id,
        Windows = [new(0, 300)],
        InitialState = new("round", "A", "B"),
        SetUpTimes = new(Section: 10, GradeGroup: 0, Blade: 5),
    };

    private static ScheduleJob Job(string id, string sawId, string section, StepRun steps) => new()
    {
        JobId = id,
        Options = [new() { SawId = sawId, SetUp = new(section, "A", "B"), Steps = [steps], CostMicrosPerSecond = 2, SetUpCostMicrosPerSecond = 3 }],
    };
}
