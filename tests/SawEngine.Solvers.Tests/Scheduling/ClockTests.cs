using SawEngine.Core;
using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Solvers.Tests.Scheduling;

/// <summary>Times worked out by hand.</summary>
public class ClockTests
{
    private static readonly SetUpState Round = new("round", "alloy", "B1");
    private static readonly SetUpState Tube = new("tube", "alloy", "B1");
    private static readonly SetUpTimes Times = new(Section: 100, GradeGroup: 50, Blade: 200);

    [Fact]
    public void Set_up_is_done_before_the_material_is_released()
    {
        var job = Schedule(Saw(new TimeWindow(0, 1000)), Job(Tube, release: 500, steps: new StepRun(60_000, 1))).Job(1);
        Assert.Equal([new("section", 0, 100)], job.SetUps);
        Assert.Equal([new(500, 560, 1)], job.Work);
    }

    [Fact]
    public void Set_up_that_does_not_fit_before_the_break_waits()
    {
        var job = Schedule(Saw(new(0, 99), new(200, 1000)), Job(Tube, steps: new StepRun(60_000, 1))).Job(1);
        Assert.Equal([new("section", 200, 300)], job.SetUps);
        Assert.Equal(300, job.Start);
    }

    [Fact]
    public void Set_up_parts_may_have_a_break_between_them()
    {
        var job = Schedule(Saw(new(0, 260), new(400, 1000)), Job(new("tube", "alloy", "B2"), steps: new StepRun(60_000, 1))).Job(1);
        Assert.Equal([NewBlade("blade", 0, 200), new("section", 400, 500)], job.SetUps);
    }

    [Fact]
    public void Break_parts_a_job_between_two_steps()
    {
        var job = Schedule(Saw(new(0, 100), new(130, 1000)), Job(Round, steps: new StepRun(30_000, 5))).Job(1);
        Assert.Equal([new(0, 90, 3), new(130, 190, 2)], job.Work);
    }

    [Fact]
    public void Step_that_ends_with_the_shift_is_done_in_it()
    {
        var job = Schedule(Saw(new(0, 90), new(130, 1000)), Job(Round, steps: new StepRun(30_000, 3))).Job(1);
        Assert.Equal([new(0, 90, 3)], job.Work);
    }

    [Fact]
    public void Step_that_would_end_a_millisecond_after_the_shift_waits()
    {
        var job = Schedule(Saw(new(0, 90), new(130, 1000)), Job(Round, steps: [new(30_000, 2), new(30_001, 1)])).Job(1);
        Assert.Equal([new(0, 60, 2), new(130, 161, 1)], job.Work);
    }

    [Fact]
    public void Milliseconds_add_up_within_a_span_and_are_rounded_up_once()
    {
        var job = Schedule(Saw(new TimeWindow(0, 1000)), Job(Round, steps: [new(333, 3), new(1, 2)])).Job(1);
        Assert.Equal([new(0, 2, 5)], job.Work); // 1001 ms
    }

    [Fact]
    public void Job_longer_than_a_shift_goes_on_the_next_morning()
    {
        var job = Schedule(Saw(new(0, 28_800), new(86_400, 115_200)), Job(Round, steps: new StepRun(600_000, 60))).Job(1);
        Assert.Equal([new(0, 28_800, 48), new(86_400, 93_600, 12)], job.Work);
    }

    [Fact]
    public void Break_shorter_than_a_step_is_waited_for_all_the_same()
    {
        var job = Schedule(Saw(new(0, 10), new(20, 25), new(30, 1000)), Job(Round, steps: new StepRun(8_000, 2))).Job(1);
        Assert.Equal([new(0, 8, 1), new(30, 38, 1)], job.Work);
    }

    [Fact]
    public void Job_that_runs_through_waits_for_a_window_that_holds_it()
    {
        var job = Schedule(Saw(new(0, 100), new(130, 1000)), Job(Round, mayPause: false, steps: new StepRun(30_000, 4))).Job(1);
        Assert.Equal([new(130, 250, 4)], job.Work);
    }

    [Fact]
    public void Job_that_runs_through_needs_room_for_its_blade_change_too()
    {
        var saw = Saw(new(0, 350), new(500, 2000)) with { RemainingBladeLife = 500_000_000 };
        var job = Schedule(saw, Job(Round, mayPause: false, steps: new StepRun(100_000, 2, 400_000_000))).Job(1);
        Assert.Equal([NewBlade("bladeWorn", 600, 800)], job.SetUps);
        Assert.Equal([new(500, 600, 1), new(800, 900, 1)], job.Work);
    }

    [Fact]
    public void Worn_blade_is_changed_inside_a_job_before_the_cut_that_it_cannot_finish()
    {
        var saw = Saw(new TimeWindow(0, 10_000)) with { RemainingBladeLife = 250_000_000 };
        var job = Schedule(saw, Job(Round, steps: [new(50_000, 1), new(100_000, 14, 100_000_000)])).Job(1);
        Assert.Equal([NewBlade("bladeWorn", 250, 450), NewBlade("bladeWorn", 1450, 1650)], job.SetUps);
        Assert.Equal([new(0, 250, 3), new(450, 1450, 10), new(1650, 1850, 2)], job.Work);
    }

    [Fact]
    public void Blade_too_worn_for_the_first_cut_is_changed_with_the_set_up()
    {
        var saw = Saw(new TimeWindow(0, 10_000)) with { RemainingBladeLife = 99_999_999 };
        var job = Schedule(saw, Job(Tube, release: 1000, steps: new StepRun(100_000, 1, 100_000_000))).Job(1);
        Assert.Equal([new("section", 0, 100), NewBlade("bladeWorn", 100, 300)], job.SetUps);
        Assert.Equal(1000, job.Start);
    }

    [Fact]
    public void Blade_change_that_does_not_fit_before_the_break_waits()
    {
        var saw = Saw(new(0, 300), new(500, 1000)) with { RemainingBladeLife = 100_000_000 };
        var job = Schedule(saw, Job(Round, steps: new StepRun(150_000, 2, 100_000_000))).Job(1);
        Assert.Equal([NewBlade("bladeWorn", 500, 700)], job.SetUps);
        Assert.Equal([new(0, 150, 1), new(700, 850, 1)], job.Work);
    }

    [Fact]
    public void Blade_change_of_no_duration_still_gives_a_new_blade()
    {
        var saw = Saw(new TimeWindow(0, 1000)) with { RemainingBladeLife = 0, SetUpTimes = new(100, 50, 0) };
        var job = Schedule(saw, Job(Round, steps: new StepRun(10_000, 3, 500_000_000))).Job(1);
        Assert.Equal([NewBlade("bladeWorn", 0, 0), NewBlade("bladeWorn", 20, 20)], job.SetUps);
        Assert.Equal([new(0, 20, 2), new(20, 30, 1)], job.Work);
    }

    [Fact]
    public void Another_blade_has_its_own_life()
    {
        var saw = Saw(new TimeWindow(0, 1000)) with { RemainingBladeLife = 0 };
        var job = Schedule(saw, Job(new("round", "alloy", "B2"), steps: new StepRun(10_000, 2, 500_000_000))).Job(1);
        Assert.Equal([NewBlade("blade", 0, 200)], job.SetUps);
    }

    [Fact]
    public void Job_goes_to_the_saw_on_which_it_is_done_first()
    {
        var problem = ProblemOf.Makespan([ProblemOf.Saw("S1"), ProblemOf.Saw("S2")], [ProblemOf.Job(1, [50, 20])]);
        Assert.Equal("S2", Solved.By(problem).Job(1).SawId);
    }

    [Fact]
    public void Two_unlike_saws_share_the_work()
    {
        // By hand: 10 jobs of 30 s on S1 and of 15 s on S2: 3 and 7 end at 90 and 105, 4 and 6 at 120 and 90.
        var jobs = Enumerable.Range(1, 10).Select(number => ProblemOf.Job(number, [30, 15])).ToList();
        Assert.Equal(105, Solved.By(ProblemOf.Makespan([ProblemOf.Saw("S1"), ProblemOf.Saw("S2")], jobs)).Makespan());
    }

    [Fact]
    public void Frozen_job_that_overlaps_a_downtime_keeps_its_place_and_pauses_over_it()
    {
        // Down from 200 to 500. Frozen at 100: three cuts of 30 s until 190, two from 500 on; the urgent job waits for it.
        var frozen = Job(Round, steps: new StepRun(30_000, 5)) with { Frozen = new("S1", 100) };
        var urgent = Job(Round, steps: new StepRun(10_000, 1)) with { JobId = ProblemOf.Id(2) };
        var problem = ProblemOf.WithTardiness([Saw(new(0, 200), new(500, 1000))], [frozen, urgent], [1000, 0], [1, 1000]);
        Assert.Equal([new(100, 190, 3), new(500, 560, 2)], Solved.By(problem).Job(1).Work);
        Assert.Equal(560, Solved.By(problem).Job(2).Start);
    }

    [Fact]
    public void Job_that_runs_through_starts_again_where_the_hands_for_its_blade_change_are_gone_until_the_next_shift()
    {
        // S2 is set up until 95 by the only operator, who could change the blade of S1 at 42, leaves at 100 and is back at 200: two cuts of 40 s with a change of 10 s between.
        var operators = new ScheduleOperator("O1", [new(0, 100), new(200, 400)], ["S1", "S2"], 2);
        ScheduleSaw[] saws = [ProblemOf.Saw("S1") with { SetUpTimes = new(0, 0, Blade: 10) }, ProblemOf.Saw("S2") with { SetUpTimes = new(Section: 95, 0, 0) }];
        var through = ProblemOf.Job(1, [80]) with { Frozen = new("S1", 2) };
        through = through with { Options = [through.Options[0] with { MayPause = false, Steps = [new(40_000, 2, 600_000_000)] }] };
        var other = ProblemOf.Job(2, [null, 10], setUp: Round) with { Frozen = new("S2", 1) };
        var job = Solved.By(ProblemOf.Makespan(saws, [through, other]) with { Operators = [operators] }, Effort.Quick).Job(1);
        Assert.Equal([new("bladeWorn", 240, 250, "O1", ScheduleSaw.FullBladeLife)], job.SetUps);
        Assert.Equal([new(200, 240, 1), new(250, 290, 1)], job.Work);
    }

    [Fact]
    public void Job_without_a_step_is_scheduled_and_takes_no_time()
    {
        var job = Schedule(Saw(new TimeWindow(10, 20)), Job(Round)).Job(1);
        Assert.Equal([new(10, 10, 0)], job.Work);
    }

    private static ScheduledSetUp NewBlade(string kind, long start, long finish) => new(kind, start, finish, null, ScheduleSaw.FullBladeLife);

    private static ScheduleSaw Saw(params TimeWindow[] windows) => new()
    {
        SawId = "S1",
        Windows = windows,
        InitialState = Round,
        SetUpTimes = Times,
    };

    private static ScheduleJob Job(SetUpState setUp, long release = 0, bool mayPause = true, params StepRun[] steps) => new()
    {
        JobId = ProblemOf.Id(1),
        Release = release,
        Options = [new() { SawId = "S1", SetUp = setUp, Steps = steps, MayPause = mayPause }],
    };

    private static Schedule Schedule(ScheduleSaw saw, ScheduleJob job) => Solved.By(ProblemOf.Makespan([saw], [job]), Effort.Quick);
}
