using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Core.Tests.Scheduling;

/// <summary>Four jobs on two saws, scheduled by hand, and a fifth that no saw can take.</summary>
internal static class HandSchedule
{
    private static readonly SetUpTimes Times = new(Section: 100, GradeGroup: 50, Blade: 200);

    // Two shifts of 1000 s with a break of 1000 s between.
    private static readonly TimeWindow[] Shifts = [new(0, 1000), new(2000, 3000)];

    public static ScheduleProblem Problem { get; } = new()
    {
        Saws =
        [
            new()
            {
                SawId = "S1",
                Windows = Shifts,
                InitialState = new("round", "A", "B1"),
                SetUpTimes = Times,
                RemainingBladeLife = 400_000_000,
            },
            new() { SawId = "S2", Windows = Shifts, InitialState = new(null, null, null), SetUpTimes = Times },
        ],
        Jobs =
        [
            Job("J1", "S1", new("flat", "B", "B1"), 200, true, new StepRun(100_500, 4, 150_000_000)),
            Job("J2", "S1", new("flat", "B", "B2"), 0, true, new StepRun(150_000, 1), new StepRun(200_000, 2, 300_000_000)),
            Job("J3", "S2", new("tube", "A", "B3"), 0, true, new StepRun(300_000, 4)),
            Job("J4", "S2", new("tube", "A", "B3"), 0, false, new StepRun(350_000, 1)),
            new() { JobId = "J5", Options = [] },
        ],
        Deliveries = [new("D1", 500, 3_600_000, ["J1", "J3"]), new("D2", 3000, 3_600_000, ["J2", "J4", "J5"])],
    };

    public static Schedule Good { get; } = new()
    {
        Jobs =
        [
            // Two cuts use 0.3 of the 0.4 that is left of the blade; the third needs 0.15 and a new blade. 201.0 s for two cuts.
            new()
            {
                JobId = "J1",
                SawId = "S1",
                Sequence = 1,
                SetUps = [new("gradeGroup", 0, 50), new("section", 50, 150), new("bladeWorn", 401, 601)],
                Work = [new(200, 401, 2), new(601, 802, 2)],
            },
            // 198 s before the break are too few for the other blade.
            new() { JobId = "J2", SawId = "S1", Sequence = 2, SetUps = [new("blade", 2000, 2200)], Work = [new(2200, 2750, 3)] },
            new()
            {
                JobId = "J3",
                SawId = "S2",
                Sequence = 1,
                SetUps = [new("gradeGroup", 0, 50), new("blade", 50, 250), new("section", 250, 350)],
                Work = [new(350, 950, 2), new(2000, 2600, 2)],
            },
            new() { JobId = "J4", SawId = "S2", Sequence = 2, SetUps = [], Work = [new(2600, 2950, 1)] },
        ],
        Unscheduled = [new("J5", UnscheduledReason.NoSaw)],
        // D1 is 2100 s late at 1000 a second; busy 752 + 750 + 1550 + 350 = 3402 s at 1000 a second.
        CostMicros = 2_100_000 + 3_402_000,
        BoundMicros = 0,
        Rule = "by hand",
    };

    private static ScheduleJob Job(string id, string saw, SetUpState setUp, long release, bool mayPause, params StepRun[] steps) => new()
    {
        JobId = id,
        Release = release,
        Options = [new() { SawId = saw, SetUp = setUp, Steps = steps, MayPause = mayPause, CostMicrosPerSecond = 1000 }],
    };
}
