using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;
using static SawEngine.Core.Tests.Scheduling.ByHand.Edit;

namespace SawEngine.Core.Tests.Scheduling.ByHand;

/// <summary>Changes of grade group and angle by pair, and the angle set beside the others.</summary>
internal static class SetUpsByHand
{
    private static readonly ScheduleProblem Problem = new()
    {
        Saws =
        [
            new()
            {
                SawId = "S",
                Windows = [new(0, 1000)],
                InitialState = new("round", "A", "B1", "0"),
                SetUpTimes = new(Section: 100, GradeGroup: 50, Blade: 200, Angle: 30)
                {
                    GradeGroupChanges = new([new("A", "B", 80)]),
                    AngleChanges = new([new("0", "45", 40), new("0", "45", 60), new(null, "45", 70)]),
                    Beside = [SetUpRules.Angle],
                },
            },
        ],
        Jobs = [Job("J1", new("flat", "B", "B1", "45"), 20_000), Job("J2", new("flat", "C", "B1", "0"), 10_000)],
        Deliveries = [],
    };

    // J1: A to B takes 80 s and 0 to 45 degrees 40 s by pair, the section its usual 100 s: 0 + 80 + 100 = 180. J2: B to C and 45 to 0 are not listed: 50 s and 30 s.
    // 20 + 10 s of work at 2, 180 + 50 s of set-up at 3, the angle beside it.
    private static readonly Schedule Good = Of(
        60 + 690,
        Placed("J1", "S", 1, [new("angle", 0, 40), new("gradeGroup", 0, 80), new("section", 80, 180)], new WorkSpan(180, 200, 1)),
        Placed("J2", "S", 2, [new("gradeGroup", 200, 250), new("angle", 200, 230)], new WorkSpan(250, 260, 1)));

    public static HandCase Case { get; } = new("set-ups by pair and beside", Problem, Good,
    [
        new("angle not set up", s => s.SetsUp("J1", new("gradeGroup", 0, 80), new("section", 80, 180)), ScheduleRule.SetUpMissing),
        new("angle in its usual time", s => s.SetsUp("J1", new("angle", 0, 30), new("gradeGroup", 0, 80), new("section", 80, 180)), ScheduleRule.SetUpDuration),
        new("angle as from an unknown one", s => s.SetsUp("J1", new("angle", 0, 70), new("gradeGroup", 0, 80), new("section", 80, 180)), ScheduleRule.SetUpDuration),
        new("grade group in its usual time", s => s.SetsUp("J1", new("angle", 0, 40), new("gradeGroup", 0, 50), new("section", 80, 180)), ScheduleRule.SetUpDuration),
        new("pair the other way round", s => s.SetsUp("J2", new("gradeGroup", 200, 250), new("angle", 200, 240)), ScheduleRule.SetUpDuration),
        new("section beside the grade group", s => s.SetsUp("J1", new("angle", 0, 40), new("gradeGroup", 0, 80), new("section", 0, 100)), ScheduleRule.Overlap),
        new("angle set while the saw still works", s => s.SetsUp("J2", new("angle", 190, 220), new("gradeGroup", 200, 250)), ScheduleRule.Overlap),
        new("work while the angle is set", s => s.SetsUp("J2", new("gradeGroup", 200, 250), new("angle", 240, 270)), ScheduleRule.Overlap),
        new("angle set after the work", s => s.SetsUp("J2", new("gradeGroup", 200, 250), new("angle", 260, 290)), ScheduleRule.SetUpOrder),
        new("parts not listed by start", s => s.SetsUp("J1", new("section", 80, 180), new("gradeGroup", 0, 80), new("angle", 0, 40)), ScheduleRule.SetUpOrder),
        new("life of a blade that is not mounted", s => s.SetsUp("J2", new("gradeGroup", 200, 250, MountedLife: 1), new("angle", 200, 230)), ScheduleRule.BladeNotReady),
        Mutant.Of("nothing beside the others", p => p.Saw("S", saw => saw with { SetUpTimes = saw.SetUpTimes with { Beside = [] } }), ScheduleRule.Overlap, ScheduleRule.SetUpOrder),
    ]);

    private static ScheduleJob Job(string id, SetUpState setUp, long milliseconds) => new()
    {
        JobId = id,
        Options = [new() { SawId = "S", SetUp = setUp, Steps = [new(milliseconds, 1)], CostMicrosPerSecond = 2, SetUpCostMicrosPerSecond = 3 }],
    };
}
