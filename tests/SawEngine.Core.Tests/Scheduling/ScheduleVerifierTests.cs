using SawEngine.Core.Scheduling;
using SawEngine.Core.Tests.Scheduling.ByHand;

namespace SawEngine.Core.Tests.Scheduling;

public class ScheduleVerifierTests
{
    [Theory]
    [MemberData(nameof(CaseNames))]
    public void Schedule_by_hand_is_clean(string name)
    {
        var one = Case(name);
        Assert.Empty(ScheduleVerifier.Verify(one.Problem, one.Good));
        Assert.Equal(one.Good.CostMicros, ScheduleCost.Micros(one.Problem, one.Good.Jobs));
    }

    [Theory]
    [MemberData(nameof(MutantNames))]
    public void Mutant_is_rejected_with_the_code_of_the_rule_it_breaks(string caseName, string name)
    {
        var one = Case(caseName);
        var mutant = one.Mutants.Single(mutant => mutant.Name == name);
        var (problem, broken) = (mutant.Against(one.Problem), mutant.Change(one.Good));
        if (mutant.Codes is not [ScheduleRule.CostWrong] && broken.CostMicros == one.Good.CostMicros)
            broken = Recosted(problem, broken);
        var codes = ScheduleVerifier.Verify(problem, broken).Select(violation => violation.Code).Distinct().Order();
        Assert.Equal(mutant.Codes.Order(), codes);
    }

    [Fact]
    public void Every_rule_has_a_mutant()
    {
        var rules = typeof(ScheduleRule).GetFields().Select(field => (string)field.GetValue(null)!);
        Assert.Empty(rules.Except(HandCase.All.SelectMany(one => one.Mutants).SelectMany(mutant => mutant.Codes)));
    }

    [Fact]
    public void Violation_says_which_job_it_is_about_and_where_that_is_listed()
    {
        var broken = HandSchedule.Good.Works("J3", new(450, 1050, 2), new(2000, 2600, 2)) with { Unscheduled = [new("J5", "no_idea")] };
        var found = ScheduleVerifier.Verify(HandSchedule.Problem, broken with { BoundMicros = long.MaxValue });
        Assert.Equal(
            [(ScheduleRule.UnknownReason, "J5", null), (ScheduleRule.WorkOutsideShift, "J3", 2), (ScheduleRule.BoundAboveCost, null, null)],
            found.Select(violation => (violation.Code, violation.JobId, violation.JobIndex)));
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

    public static TheoryData<string> CaseNames => [.. HandCase.All.Select(one => one.Name)];

    public static TheoryData<string, string> MutantNames
    {
        get
        {
            var names = new TheoryData<string, string>();
            foreach (var one in HandCase.All)
                foreach (var mutant in one.Mutants)
                    names.Add(one.Name, mutant.Name);
            return names;
        }
    }

    private static HandCase Case(string name) => HandCase.All.Single(one => one.Name == name);

    /// <summary>The same schedule with the cost that it now has, so that only the rule in question is broken.</summary>
    private static Schedule Recosted(ScheduleProblem problem, Schedule schedule)
    {
        var options = problem.Jobs.ToDictionary(job => job.JobId, job => job.Options);
        return schedule.Jobs.All(job => job.Work.Count > 0 && options[job.JobId].Any(option => option.SawId == job.SawId))
            ? schedule with { CostMicros = ScheduleCost.Micros(problem, schedule.Jobs) }
            : schedule;
    }
}
