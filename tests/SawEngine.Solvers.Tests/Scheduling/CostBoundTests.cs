using SawEngine.Core;
using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Tests.Scheduling;

/// <summary>The bound on small problems, where the least cost is found by hand: a second until the last job is done costs one, so that the bound is the least finish.</summary>
public class CostBoundTests
{
    // Operators on shift to 100 and from 110 on, in one shift of the saw. Three steps of 40 s: the third would end at 120, so all start at 110. With a pause: 80 s, then from 110 on.
    [Theory]
    [InlineData(false, 230)]
    [InlineData(true, 150)]
    public void Job_that_runs_through_does_not_wait_for_the_next_operator(bool mayPause, long finish)
    {
        var problem = Problem(ProblemOf.Saw("S1", new TimeWindow(0, 300)), Job(mayPause)) with { Operators = [Operator("O1", new TimeWindow(0, 100)), Operator("O2", new TimeWindow(110, 300))] };
        AssertBound(finish, problem);
        AssertPausesIf(!mayPause, problem, new(0, 80, 2), new(110, 150, 1));
    }

    // Overtime from 100 to 110 joins two shifts, but no operator is there in it.
    [Theory]
    [InlineData(false, 230)]
    [InlineData(true, 150)]
    public void Job_that_runs_through_does_not_wait_out_overtime_that_no_operator_works(bool mayPause, long finish)
    {
        var saw = ProblemOf.Saw("S1", new TimeWindow(0, 100), new TimeWindow(110, 300)) with { Overtime = [new(new(100, 110), 0)] };
        var problem = Problem(saw, Job(mayPause)) with { Operators = [Operator("O1", new TimeWindow(0, 100)), Operator("O2", new TimeWindow(110, 300))] };
        AssertBound(finish, problem);
        AssertPausesIf(!mayPause, problem, new(0, 80, 2), new(110, 150, 1));
    }

    // The same of a job that is running when the plan starts, with one operator who has a break.
    [Theory]
    [InlineData(false, 230)]
    [InlineData(true, 150)]
    public void Running_job_that_runs_through_does_not_wait_for_its_operator(bool mayPause, long finish)
    {
        var problem = Problem(ProblemOf.Saw("S1", new TimeWindow(0, 300)), Job(mayPause) with { Frozen = new("S1", 0) }) with { Operators = [Operator("O1", new(0, 100), new(110, 300))] };
        AssertBound(finish, problem);
        AssertPausesIf(!mayPause, problem, new(0, 80, 2), new(110, 150, 1));
    }

    // Two saws that are attended to 5 and from 100 on, and run by themselves in between for a bar and a cut. Half of a load, a cut, a load and a cut of 10 s each on either is done at 20.
    [Fact]
    public void Parts_load_and_cut_by_themselves()
    {
        StepRun[] bar = [new(10_000, 1, 0, StepKind.Load), new(10_000, 1)];
        var saws = Enumerable.Range(0, 2).Select(saw => ProblemOf.Saw(ProblemOf.SawId(saw), new TimeWindow(0, 5), new TimeWindow(100, 300)) with { Unattended = new([new(5, 100)], Bars: 1, Cuts: 1) }).ToList();
        var options = saws.Select(saw => new JobOption { SawId = saw.SawId, SetUp = ProblemOf.AnySetUp, Steps = [.. bar, .. bar], MayRunUnattended = true });
        var problem = ProblemOf.Makespan(saws, [new() { JobId = "J", MostParts = 2, Options = [.. options] }]) with
        {
            MakespanCostMicrosPerSecond = 1,
            Deliveries = [new("D", 0, ProblemOf.PerSecond, ["J"])],
        };
        var schedule = Solved.By(problem);
        Assert.Equal((2, 40, 40), (schedule.Jobs.Count, schedule.CostMicros, schedule.BoundMicros));
    }

    private static ScheduleOperator Operator(string id, params TimeWindow[] windows) => new(id, windows, ["S1"], 1);

    private static ScheduleJob Job(bool mayPause) => new()
    {
        JobId = "J",
        Options = [new() { SawId = "S1", SetUp = ProblemOf.AnySetUp, Steps = [new(40_000, 3)], MayPause = mayPause }],
    };

    private static ScheduleProblem Problem(ScheduleSaw saw, params ScheduleJob[] jobs) => ProblemOf.Makespan([saw], jobs) with { MakespanCostMicrosPerSecond = 1 };

    private static void AssertBound(long least, ScheduleProblem problem)
    {
        foreach (var effort in Enum.GetValues<Effort>())
            Assert.Equal((least, least), Solved.By(problem, effort) is var schedule ? (schedule.BoundMicros, schedule.CostMicros) : default);
    }

    /// <summary>Whether the verifier, too, takes it for a pause of a job that must run through, and for nothing else.</summary>
    private static void AssertPausesIf(bool pauses, ScheduleProblem problem, params WorkSpan[] work)
    {
        ScheduledJob[] jobs = [new() { JobId = "J", SawId = "S1", Sequence = 1, SetUps = [], Work = work }];
        var schedule = new Schedule { Jobs = jobs, Unscheduled = [], CostMicros = ScheduleCost.Micros(problem, jobs), BoundMicros = 0, Rule = "by hand" };
        Assert.Equal(pauses ? [ScheduleRule.WorkPaused] : [], ScheduleVerifier.Verify(problem, schedule).Select(violation => violation.Code));
    }
}
