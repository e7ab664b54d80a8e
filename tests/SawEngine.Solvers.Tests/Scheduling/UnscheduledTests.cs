using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Tests.Scheduling;

public class UnscheduledTests
{
    [Fact]
    public void Job_without_a_saw() => Assert.Equal(UnscheduledReason.NoSaw, Reason([]));

    [Fact]
    public void Job_whose_saws_are_not_there() => Assert.Equal(UnscheduledReason.NoSaw, Reason([Option() with { SawId = "S9" }]));

    [Fact]
    public void Saw_without_a_shift() => Assert.Equal(UnscheduledReason.NoShift, Reason([Option()], windows: []));

    [Fact]
    public void Release_after_the_last_shift() => Assert.Equal(UnscheduledReason.NoShift, Reason([Option()], release: 250));

    [Fact]
    public void More_work_than_the_shifts_hold() =>
        Assert.Equal(UnscheduledReason.NoShift, Reason([Option(new StepRun(10_000, 21))]));

    [Fact]
    public void Step_longer_than_every_shift() =>
        Assert.Equal(UnscheduledReason.StepLongerThanShift, Reason([Option(new StepRun(100_001, 1))]));

    [Fact]
    public void Job_that_runs_through_and_is_longer_than_every_shift() => Assert.Equal(
        UnscheduledReason.StepLongerThanShift, Reason([Option(new StepRun(10_000, 11)) with { MayPause = false }]));

    [Fact]
    public void Job_that_would_fit_a_shift_that_is_past() => Assert.Equal(
        UnscheduledReason.NoShift, Reason([Option(new StepRun(10_000, 10)) with { MayPause = false }], release: 151));

    [Fact]
    public void Cut_that_no_blade_outlasts() => Assert.Equal(
        UnscheduledReason.CutExceedsBladeLife, Reason([Option(new StepRun(1000, 1, ScheduleSaw.FullBladeLife + 1))]));

    [Fact]
    public void As_many_jobs_as_the_shifts_hold_are_scheduled()
    {
        var jobs = Enumerable.Range(1, 5).Select(number => ProblemOf.Job(number, [30])).ToList();
        var schedule = Solved.By(ProblemOf.Makespan([ProblemOf.Saw("S1", new TimeWindow(0, 100))], jobs));
        Assert.Equal(3, schedule.Jobs.Count);
        Assert.All(schedule.Unscheduled, job => Assert.Equal(UnscheduledReason.NoShift, job.Reason));
    }

    [Fact]
    public void Problem_without_jobs_has_an_empty_schedule()
    {
        var schedule = Solved.By(ProblemOf.Makespan([ProblemOf.Saw("S1")], []));
        Assert.Empty(schedule.Jobs);
        Assert.Equal(0, schedule.CostMicros);
    }

    [Fact]
    public void Problem_without_saws_leaves_every_job_out() =>
        Assert.Single(Solved.By(ProblemOf.Makespan([], [ProblemOf.Job(1, [30])])).Unscheduled);

    private static JobOption Option(params StepRun[] steps) => new()
    {
        SawId = "S1",
        SetUp = ProblemOf.AnySetUp,
        Steps = steps.Length > 0 ? steps : [new(10_000, 1)],
    };

    private static string Reason(JobOption[] options, long release = 0, TimeWindow[]? windows = null)
    {
        var saw = ProblemOf.Saw("S1") with { Windows = windows ?? [new(0, 100), new(150, 250)] };
        var job = new ScheduleJob { JobId = ProblemOf.Id(1), Release = release, Options = options };
        return Assert.Single(Solved.By(ProblemOf.Makespan([saw], [job])).Unscheduled).Reason;
    }
}
