using SawEngine.Core;
using SawEngine.Core.Scheduling;
using SawEngine.Core.Scheduling.Explanations;
using SawEngine.Solvers.Scheduling;
using SawEngine.Solvers.Scheduling.Explaining;

namespace SawEngine.Solvers.Tests.Scheduling;

/// <summary>Small shops whose times are worked out by hand.</summary>
public class ScheduleExplainerTests
{
    private const long Shift = 28_800;
    private const long Day = 86_400;

    [Fact]
    public void Each_job_says_what_it_waits_for()
    {
        // S1 is attended 0 to 28,800 and a day later. J01 starts at once, J02 after it, J03 at its release, J04 no longer fits before the night.
        var problem = ProblemOf.WithTardiness(
            [ProblemOf.Saw("S1", new(0, Shift), new(Day, Day + Shift))],
            [ProblemOf.Job(1, [3_600]), ProblemOf.Job(2, [3_600]), ProblemOf.Job(3, [3_600], release: 20_000), ProblemOf.Job(4, [10_000], release: 23_000)],
            [3_600, 7_200, 23_600, 2 * Day], [1_000, 1_000, 1_000, 1]);
        var jobs = Explained(problem).Jobs;
        Assert.Equal(
            [new(WaitKind.PlanStart), new(WaitKind.SawBusy, ProblemOf.Id(1)), new(WaitKind.Release), new(WaitKind.NotAttended)], jobs.Select(job => job.WaitsFor));
        Assert.All(jobs, job => Assert.Equal(SawReason.OnlySaw, job.SawReason));
    }

    [Fact]
    public void Successor_waits_for_the_job_before_it()
    {
        var problem = ProblemOf.WithTardiness(
            [ProblemOf.Saw("S1"), ProblemOf.Saw("S2")], [ProblemOf.Job(1, [500, null]), ProblemOf.Job(2, [null, 100]) with { After = [ProblemOf.Id(1)] }], [0, 0], [1, 1]);
        Assert.Equal(new(WaitKind.Predecessor, ProblemOf.Id(1)), Explained(problem).Jobs.Single(job => job.JobId == ProblemOf.Id(2)).WaitsFor);
    }

    [Fact]
    public void Set_up_waits_for_hands_that_are_busy_elsewhere()
    {
        // One operator sets up S1 from 0 to 100 and S2 from 100 to 200.
        var saws = new[] { "S1", "S2" }.Select(id => ProblemOf.Saw(id) with { SetUpTimes = new(100, 0, 0) }).ToList();
        var problem = ProblemOf.WithTardiness(saws, [ProblemOf.Job(1, [500, null], 0, new("a", null, null)), ProblemOf.Job(2, [null, 500], 0, new("b", null, null))], [0, 0], [2, 1]);
        var jobs = Explained(problem with { Operators = [new("anna", [new(0, 1_000_000)], ["S1", "S2"], 2)] }).Jobs;
        Assert.Equal([new(WaitKind.PlanStart), new(WaitKind.OperatorOrCrane)], jobs.Select(job => job.WaitsFor));
    }

    [Fact]
    public void Other_saw_is_named_with_what_it_would_cost_more()
    {
        // 100 s at 2 on S1 against 300 s at 1 on S2: 100 more there.
        var problem = ProblemOf.WithTardiness([ProblemOf.Saw("S1"), ProblemOf.Saw("S2")], [ProblemOf.Job(1, [100, 300])], [1_000], [0]);
        problem = problem with { Jobs = [problem.Jobs[0] with { Options = [problem.Jobs[0].Options[0] with { CostMicrosPerSecond = 2 }, problem.Jobs[0].Options[1] with { CostMicrosPerSecond = 1 }] }] };
        var job = Explained(problem).Jobs.Single();
        Assert.Equal((SawReason.LeastCost, "S2", 100L), (job.SawReason, job.OtherSawId, job.OtherSawCostMicros));
    }

    [Fact]
    public void Late_job_tells_where_its_time_goes()
    {
        // J01 from 0 to 6,000; J02, due at 7,000, is set up 6,000 to 6,100 and cut 6,100 to 9,100: 2,100 late.
        var saw = ProblemOf.Saw("S1") with { SetUpTimes = new(100, 0, 0), InitialState = new("a", null, null) };
        var problem = ProblemOf.WithTardiness([saw], [ProblemOf.Job(1, [6_000], 0, new("a", null, null)), ProblemOf.Job(2, [3_000], 0, new("b", null, null))], [6_000, 7_000], [100, 1]);
        var late = Explained(problem).Late.Single();
        Assert.Equal((ProblemOf.Id(2), 2_100L, 2_100L), (late.JobId, late.SecondsLate, late.CostMicros));
        Assert.Equal(
            [(LatenessCauseKind.EarlierJobs, 6_000L), (LatenessCauseKind.Work, 3_000L), (LatenessCauseKind.SetUps, 100L)], late.Causes.Select(cause => (cause.Kind, cause.Seconds)));
        Assert.Equal([ProblemOf.Id(1)], late.Causes[0].JobIds);
        Assert.Equal(0, late.SecondsLateAlone);
        // First, it would end in time and J01 3,200 later (two set-ups): 320,000 more, less its own 2,100.
        var sooner = late.Cures.Single(cure => cure.Kind == LatenessCureKind.Sooner);
        Assert.Equal((0L, 320_000L - 2_100L), (sooner.SecondsLate, sooner.CostChangeMicros));
    }

    [Fact]
    public void Overtime_cures_a_job_that_waits_for_the_morning()
    {
        // The shift ends with J01; J02 takes an hour and is due an hour after the shift's end.
        var problem = ProblemOf.WithTardiness(
            [ProblemOf.Saw("S1", new(0, Shift), new(Day, Day + Shift))], [ProblemOf.Job(1, [Shift]), ProblemOf.Job(2, [3_600])], [Shift, Shift + 3_600], [100, 1]);
        var cure = Explained(problem).Late.Single().Cures.Single(cure => cure.Kind == LatenessCureKind.Overtime);
        Assert.Equal(("S1", 0L, 3_600L), (cure.SawId, cure.SecondsLate, cure.Seconds));
    }

    [Fact]
    public void Material_at_the_start_cures_a_job_that_waits_for_it()
    {
        var problem = ProblemOf.WithTardiness([ProblemOf.Saw("S1")], [ProblemOf.Job(1, [3_600], release: 5_000)], [4_000], [1]);
        var late = Explained(problem).Late.Single();
        Assert.Equal(4_600, late.SecondsLateAlone);
        Assert.Equal((LatenessCauseKind.Release, 5_000L), (late.Causes[0].Kind, late.Causes[0].Seconds));
        Assert.Equal([(LatenessCureKind.EarlierMaterial, 0L)], late.Cures.Select(cure => (cure.Kind, cure.SecondsLate)));
    }

    [Fact]
    public void Splitting_cures_a_job_that_is_too_long_for_one_saw()
    {
        // 100 cuts of a minute end at 6,000; halves on two saws at 3,000.
        var problem = ProblemOf.WithTardiness([ProblemOf.Saw("S1"), ProblemOf.Saw("S2")], [ProblemOf.Job(1, [6_000, 6_000])], [3_500], [1]);
        problem = problem with { Jobs = [problem.Jobs[0] with { Options = [.. problem.Jobs[0].Options.Select(option => option with { Steps = [new(60_000, 100)] })] }] };
        var cure = Explained(problem).Late.Single().Cures.Single(cure => cure.Kind == LatenessCureKind.Split);
        Assert.Equal(0, cure.SecondsLate);
    }

    [Fact]
    public void Other_saw_cures_lateness_at_the_cost_of_others()
    {
        // Both are due at 1,000. S1 takes 800 and 1,000, S2 3,000 for J01 alone: side by side J01 is late, behind J02 it is late too.
        var problem = ProblemOf.WithTardiness([ProblemOf.Saw("S1"), ProblemOf.Saw("S2")], [ProblemOf.Job(1, [800, 3_000]), ProblemOf.Job(2, [1_000, null])], [1_000, 1_000], [1, 2]);
        var late = Explained(problem).Late.Single();
        Assert.Equal((ProblemOf.Id(1), 800L), (late.DeliveryId, late.SecondsLate));
        Assert.DoesNotContain(late.Cures, cure => cure.Kind == LatenessCureKind.OtherSaw);
        Assert.Equal((0L, 1_600L - 800L), late.Cures.Where(cure => cure.Kind == LatenessCureKind.Sooner).Select(cure => (cure.SecondsLate, cure.CostChangeMicros)).Single());
    }

    private static ScheduleExplanation Explained(ScheduleProblem problem)
    {
        var schedule = new VerifiedScheduler(new DispatchScheduler()).Solve(problem, Effort.Standard, CancellationToken.None);
        Assert.Empty(schedule.Unscheduled);
        return new ScheduleExplainer().Explain(problem, schedule, CancellationToken.None);
    }
}
