using SawEngine.Core.Scheduling;

namespace SawEngine.Core.Tests.Scheduling;

public class ScheduleVerifierTests
{
    [Fact]
    public void Schedule_by_hand_is_clean() => Assert.Empty(ScheduleVerifier.Verify(HandSchedule.Problem, HandSchedule.Good));

    [Theory]
    [MemberData(nameof(MutantNames))]
    public void Mutant_is_rejected_with_the_code_of_the_rule_it_breaks(string name)
    {
        var mutant = Mutants.Single(mutant => mutant.Name == name);
        var broken = mutant.Change(HandSchedule.Good);
        if (mutant.Codes is not [ScheduleRule.CostWrong] && broken.CostMicros == HandSchedule.Good.CostMicros)
            broken = Recosted(broken);
        var codes = ScheduleVerifier.Verify(mutant.Problem, broken).Select(violation => violation.Code).Distinct().Order();
        Assert.Equal(mutant.Codes.Order(), codes);
    }

    [Fact]
    public void Every_rule_has_a_mutant()
    {
        var rules = typeof(ScheduleRule).GetFields().Select(field => (string)field.GetValue(null)!);
        Assert.Empty(rules.Except(Mutants.SelectMany(mutant => mutant.Codes)));
    }

    [Fact]
    public void Blade_that_is_put_back_has_the_life_it_was_left_with()
    {
        var steps = new StepRun(10_000, 1, 600_000_000);
        var problem = new ScheduleProblem
        {
            Saws = [new() { SawId = "S", Windows = [new(0, 1000)], InitialState = new("r", "g", "B1"), SetUpTimes = new(0, 0, 5) }],
            Jobs = [Job("1", "B1"), Job("2", "B2"), Job("3", "B1")],
            Deliveries = [],
        };
        var forgotten = new Schedule
        {
            Jobs =
            [
                new() { JobId = "1", SawId = "S", Sequence = 1, SetUps = [], Work = [new(0, 10, 1)] },
                new() { JobId = "2", SawId = "S", Sequence = 2, SetUps = [new("blade", 10, 15)], Work = [new(15, 25, 1)] },
                new() { JobId = "3", SawId = "S", Sequence = 3, SetUps = [new("blade", 25, 30)], Work = [new(30, 40, 1)] },
            ],
            Unscheduled = [],
            CostMicros = 0,
            BoundMicros = 0,
            Rule = "by hand",
        };
        Assert.Equal([ScheduleRule.BladeWornOut], ScheduleVerifier.Verify(problem, forgotten).Select(violation => violation.Code));

        var last = forgotten.Jobs[2] with { SetUps = [new("blade", 25, 30), new("bladeWorn", 30, 35)], Work = [new(35, 45, 1)] };
        Assert.Empty(ScheduleVerifier.Verify(problem, forgotten with { Jobs = [forgotten.Jobs[0], forgotten.Jobs[1], last] }));

        ScheduleJob Job(string id, string blade) =>
            new() { JobId = id, Options = [new() { SawId = "S", SetUp = new("r", "g", blade), Steps = [steps] }] };
    }

    public static TheoryData<string> MutantNames => [.. Mutants.Select(mutant => mutant.Name)];

    private static readonly Mutant[] Mutants =
    [
        new("job that is not in the problem", s => s with { Unscheduled = [.. s.Unscheduled, new("J9", "no_saw_for_job")] }, ScheduleRule.UnknownJob),
        new("job without saw and reason", s => s with { Unscheduled = [] }, ScheduleRule.JobMissing),
        new("job that vanished", s => s with { Jobs = [.. s.Jobs.Where(job => job.JobId != "J4")] }, ScheduleRule.JobMissing),
        new("job both scheduled and left out", s => s with { Unscheduled = [new("J4", "no_shift_left"), .. s.Unscheduled] }, ScheduleRule.JobListedTwice),
        new("jobs not by saw", s => s with { Jobs = [.. s.Jobs.Skip(2), .. s.Jobs.Take(2)] }, ScheduleRule.ListOutOfOrder),
        new("saw that is not in the problem", s => On(On(s, "J3", "S9"), "J4", "S9"), ScheduleRule.UnknownSaw),
        new("job on a saw that cannot take it", s => s with { Jobs = [.. s.Jobs.Take(2), s.Jobs[3] with { SawId = "S1", Sequence = 3 }, s.Jobs[2]] }, ScheduleRule.SawNotEligible),
        new("sequence with a gap", s => Change(s, "J2", job => job with { Sequence = 3 }), ScheduleRule.SequenceBroken),
        new("set-up before the plan", s => Change(s, "J3", job => job with { SetUps = [new("gradeGroup", -50, 0), .. job.SetUps.Skip(1)] }), ScheduleRule.StartsBeforePlan, ScheduleRule.SetUpOutsideShift),
        new("job that starts before the one before it ends", s => Works(s, "J4", new WorkSpan(2590, 2940, 1)), ScheduleRule.Overlap),
        new("work during the set-up", s => Works(s, "J2", new WorkSpan(2150, 2700, 3)), ScheduleRule.Overlap),
        new("section not set up", s => SetsUp(s, "J1", ("gradeGroup", 0, 50), ("bladeWorn", 401, 601)), ScheduleRule.SetUpMissing),
        new("blade not set up", s => SetsUp(s, "J2"), ScheduleRule.SetUpMissing),
        new("another kind of set-up", s => SetsUp(s, "J1", ("gradeGroup", 0, 50), ("blade", 50, 150), ("bladeWorn", 401, 601)), ScheduleRule.SetUpMissing, ScheduleRule.SetUpUnneeded),
        new("set-up that nothing calls for", s => Works(SetsUp(s, "J2", ("blade", 2000, 2200), ("section", 2200, 2300)), "J2", new WorkSpan(2300, 2850, 3)), ScheduleRule.SetUpUnneeded),
        new("set-up done twice", s => Works(SetsUp(s, "J2", ("blade", 2000, 2200), ("blade", 2200, 2400)), "J2", new WorkSpan(2400, 2950, 3)), ScheduleRule.SetUpUnneeded),
        new("set-up a second too short", s => SetsUp(s, "J1", ("gradeGroup", 0, 50), ("section", 50, 149), ("bladeWorn", 401, 601)), ScheduleRule.SetUpDuration),
        new("set-up a second too long", s => SetsUp(s, "J1", ("gradeGroup", 0, 50), ("section", 50, 151), ("bladeWorn", 401, 601)), ScheduleRule.SetUpDuration),
        new("worn blade changed too fast", s => SetsUp(s, "J1", ("gradeGroup", 0, 50), ("section", 50, 150), ("bladeWorn", 401, 600)), ScheduleRule.SetUpDuration),
        new("blade before chips", s => SetsUp(s, "J3", ("blade", 0, 200), ("gradeGroup", 200, 250), ("section", 250, 350)), ScheduleRule.SetUpOrder),
        new("set-up after the work", s => SetsUp(s, "J1", ("gradeGroup", 0, 50), ("bladeWorn", 401, 601), ("section", 802, 902)), ScheduleRule.SetUpOrder),
        new("set-up into the break", s => SetsUp(s, "J2", ("blade", 802, 1002)), ScheduleRule.SetUpOutsideShift),
        new("work before its release", s => Works(s, "J1", new(199, 400, 2), new(601, 802, 2)), ScheduleRule.WorkBeforeRelease),
        new("work into the break", s => Works(s, "J3", new(450, 1050, 2), new(2000, 2600, 2)), ScheduleRule.WorkOutsideShift),
        new("work after the last shift", s => Works(s, "J4", new WorkSpan(2651, 3001, 1)), ScheduleRule.WorkOutsideShift),
        new("span a second too short", s => Works(s, "J4", new WorkSpan(2600, 2949, 1)), ScheduleRule.WorkDuration),
        new("span a second too long", s => Works(s, "J4", new WorkSpan(2600, 2951, 1)), ScheduleRule.WorkDuration),
        new("step left out", s => Works(s, "J3", new(350, 950, 2), new(2000, 2300, 1)), ScheduleRule.WorkSteps),
        new("step too many", s => Works(s, "J3", new(350, 950, 2), new(2000, 2600, 3)), ScheduleRule.WorkSteps),
        new("job without work", s => Works(s, "J4"), ScheduleRule.WorkSteps),
        new("empty span", s => Works(s, "J3", new(350, 950, 2), new(2000, 2000, 0), new(2100, 2700, 2)), ScheduleRule.WorkSteps, ScheduleRule.WorkSplit, ScheduleRule.Overlap),
        new("work that stops for nothing", s => Works(s, "J2", new(2200, 2350, 1), new(2400, 2800, 2)), ScheduleRule.WorkSplit),
        new("pause of a job that runs through", s => s, ScheduleRule.WorkPaused) { Problem = RunsThrough(HandSchedule.Problem, "J3") },
        new("worn blade not changed", s => Works(SetsUp(s, "J1", ("gradeGroup", 0, 50), ("section", 50, 150)), "J1", new WorkSpan(200, 602, 4)), ScheduleRule.BladeWornOut),
        new("worn blade changed a cut too late", s => Works(SetsUp(s, "J1", ("gradeGroup", 0, 50), ("section", 50, 150), ("bladeWorn", 502, 702)), "J1", new(200, 502, 3), new(702, 803, 1)), ScheduleRule.BladeWornOut),
        new("blade changed a cut too early", s => Works(SetsUp(s, "J1", ("gradeGroup", 0, 50), ("section", 50, 150), ("bladeWorn", 301, 501)), "J1", new(200, 301, 1), new(501, 803, 3)), ScheduleRule.SetUpUnneeded),
        new("cost a millionth off", s => s with { CostMicros = s.CostMicros - 1 }, ScheduleRule.CostWrong),
        new("bound above the cost", s => s with { BoundMicros = s.CostMicros + 1 }, ScheduleRule.BoundAboveCost),
        new("reason that is not published", s => s with { Unscheduled = [new("J5", "no_idea")] }, ScheduleRule.UnknownReason),
    ];

    private static Schedule Change(Schedule schedule, string jobId, Func<ScheduledJob, ScheduledJob> change) =>
        schedule with { Jobs = [.. schedule.Jobs.Select(job => job.JobId == jobId ? change(job) : job)] };

    private static Schedule On(Schedule schedule, string jobId, string sawId) => Change(schedule, jobId, job => job with { SawId = sawId });

    private static Schedule Works(Schedule schedule, string jobId, params WorkSpan[] work) =>
        Change(schedule, jobId, job => job with { Work = work });

    private static Schedule SetsUp(Schedule schedule, string jobId, params (string Kind, long Start, long Finish)[] parts) =>
        Change(schedule, jobId, job => job with { SetUps = [.. parts.Select(part => new ScheduledSetUp(part.Kind, part.Start, part.Finish))] });

    private static ScheduleProblem RunsThrough(ScheduleProblem problem, string jobId) => problem with
    {
        Jobs = [.. problem.Jobs.Select(job => job.JobId == jobId ? job with { Options = [job.Options[0] with { MayPause = false }] } : job)],
    };

    /// <summary>The same schedule with the cost that it now has, so that only the rule in question is broken.</summary>
    private static Schedule Recosted(Schedule schedule)
    {
        var options = HandSchedule.Problem.Jobs.ToDictionary(job => job.JobId, job => job.Options);
        return schedule.Jobs.All(job => job.Work.Count > 0 && options[job.JobId].Any(option => option.SawId == job.SawId))
            ? schedule with { CostMicros = ScheduleCost.Micros(HandSchedule.Problem, schedule.Jobs) }
            : schedule;
    }

    private sealed record Mutant(string Name, Func<Schedule, Schedule> Change, params string[] Codes)
    {
        public ScheduleProblem Problem { get; init; } = HandSchedule.Problem;
    }
}
