using SawEngine.Core.Scheduling;
using static SawEngine.Core.Tests.Scheduling.ByHand.Edit;

namespace SawEngine.Core.Tests.Scheduling.ByHand;

/// <summary>Overtime that touches a shift, overtime by itself, and overtime between two shifts that is not used.</summary>
internal static class OvertimeByHand
{
    private static readonly ScheduleProblem Problem = new()
    {
        Saws =
        [
            new()
            {
                SawId = "S",
                Windows = [new(100, 200), new(400, 500)],
                Overtime = [new(new(200, 250), 5), new(new(300, 350), 7)],
                InitialState = new("round", "A", "B"),
                SetUpTimes = new(Section: 20, GradeGroup: 0, Blade: 0),
            },
            new()
            {
                SawId = "T",
                Windows = [new(0, 50), new(80, 200)],
                Overtime = [new(new(50, 80), 9)],
                InitialState = new("flat", "A", "B"),
                SetUpTimes = new(Section: 20, GradeGroup: 0, Blade: 0),
            },
        ],
        Jobs = [Job("J1", "S", true, 30_000), Job("J2", "S", false, 20_000), Job("J3", "T", true, 30_000)],
        Deliveries = [],
    };

    // J1 is set up across the end of the shift. Its second step would end at 265, after the overtime. The 20 s that are left to 350 are too few for J2.
    // J3 leaves out the overtime, which would end it at 60.
    // 60 + 40 + 60 s of work at 2, 20 s of set-up at 3; overtime: 5 s of set-up and 30 s of work at 5, 30 s at 7.
    private static readonly Schedule Good = Of(
        320 + 60 + 175 + 210,
        Placed("J1", "S", 1, [new("section", 185, 205)], new(205, 235, 1), new(300, 330, 1)),
        Placed("J2", "S", 2, [], new WorkSpan(400, 440, 2)),
        Placed("J3", "T", 1, [], new(0, 30, 1), new(80, 110, 1)));

    public static HandCase Case { get; } = new("overtime", Problem, Good,
    [
        new("overtime not costed", s => s with { CostMicros = 380 }, ScheduleRule.CostWrong),
        new("work after the overtime", s => s.Works("J1", new(205, 235, 1), new(250, 280, 1)), ScheduleRule.WorkOutsideShift),
        new("set-up before the shift", s => s.SetsUp("J1", new ScheduledSetUp("section", 80, 100)), ScheduleRule.SetUpOutsideShift),
        new("work that stops where overtime begins", s => s.SetsUp("J1", new ScheduledSetUp("section", 100, 120)).Works("J1", new(120, 150, 1), new(200, 230, 1)), ScheduleRule.WorkSplit),
        new("pause after overtime of a job that runs through", s => s.Works("J2", new(330, 350, 1), new(400, 420, 1)), ScheduleRule.WorkPaused),
        new("work that stops in overtime", s => s.Works("J3", new(0, 30, 1), new(60, 90, 1)), ScheduleRule.WorkSplit),
        Mutant.Of("break without overtime of a job that runs through", p => p.Option("J3", option => option with { MayPause = false }), ScheduleRule.WorkPaused),
        Mutant.Of("no overtime", p => p.Saw("S", saw => saw with { Overtime = [] }), ScheduleRule.SetUpOutsideShift, ScheduleRule.WorkOutsideShift),
    ]);

    private static ScheduleJob Job(string id, string sawId, bool mayPause, long milliseconds) => new()
    {
        JobId = id,
        Options =
        [
            new() { SawId = sawId, SetUp = new("flat", "A", "B"), Steps = [new(milliseconds, 2)], MayPause = mayPause, CostMicrosPerSecond = 2, SetUpCostMicrosPerSecond = 3 },
        ],
    };
}
