using SawEngine.Core;
using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;
using SawEngine.Solvers.Scheduling;

namespace SawEngine.Solvers.Tests.Scheduling;

/// <summary>Instances of the literature and of our own with optima known by enumeration or by hand.</summary>
public class TextbookTests
{
    // Smith (1956), Naval Research Logistics Quarterly 3:59-66; own instance, optimum by enumeration.
    [Theory]
    [InlineData(Effort.Quick)]
    [InlineData(Effort.Standard)]
    public void Weighted_shortest_processing_time_minimizes_weighted_completion(Effort effort)
    {
        var problem = ProblemOf.SingleSaw([3, 5, 2, 7, 4], weight: [6, 5, 6, 7, 2]);
        Assert.Equal(253, Solved.By(problem, effort, DispatchRule.WeightedShortestProcessingTime).CostMicros);
        Assert.Equal(253, Solved.By(problem, effort).CostMicros);
    }

    // Jackson (1955); own instance, optimum by enumeration.
    [Fact]
    public void Earliest_due_date_minimizes_the_largest_lateness()
    {
        var problem = ProblemOf.SingleSaw([5, 3, 8, 2, 6], due: [9, 4, 20, 22, 15]);
        Assert.Equal(2, Solved.By(problem, Effort.Quick, DispatchRule.EarliestDueDate).MaxLateness(problem));
    }

    // Pinedo, Scheduling, sec. 3.4, total tardiness (from memory, optimum by enumeration).
    [Fact]
    public void Total_tardiness_of_five_jobs() => Assert.Equal(
        370, Solved.By(ProblemOf.SingleSaw([121, 79, 147, 83, 130], due: [260, 266, 266, 336, 337])).CostMicros);

    // Pinedo, Scheduling, sec. 3.6, total weighted tardiness (from memory, optimum by enumeration).
    [Fact]
    public void Total_weighted_tardiness_of_four_jobs() => Assert.Equal(
        67, Solved.By(ProblemOf.SingleSaw([12, 8, 15, 9], due: [16, 26, 25, 27], weight: [4, 5, 3, 5])).CostMicros);

    // Graham (1969), SIAM J. Appl. Math. 17:416-429: the family on which longest-first is at its worst, 4/3 - 1/(3m).
    [Theory]
    [InlineData(2, 7, 6, new long[] { 3, 3, 2, 2, 2 })]
    [InlineData(3, 11, 9, new long[] { 5, 5, 4, 4, 3, 3, 3 })]
    [InlineData(4, 15, 12, new long[] { 7, 7, 6, 6, 5, 5, 4, 4, 4 })]
    public void Longest_first_is_as_bad_as_Graham_says_and_the_search_finds_better(int saws, long longestFirst, long optimum, long[] p)
    {
        var problem = ProblemOf.Makespan(saws, p);
        Assert.Equal(longestFirst, Solved.By(problem, Effort.Quick, DispatchRule.LongestProcessingTime).Makespan());
        Assert.Equal(optimum, Solved.By(problem).Makespan());
    }

    // Graham (1966), Bell System Technical Journal 45:1563-1581.
    [Fact]
    public void Long_job_at_the_end_of_the_list_does_not_stay_there() =>
        Assert.Equal(3, Solved.By(ProblemOf.Makespan(3, 1, 1, 1, 1, 1, 1, 3)).Makespan());

    // McNaughton (1959), Management Science 6:1-12, data as in Brucker, Scheduling Algorithms, ch. 5 (from memory); without preemption.
    [Theory]
    [InlineData(8, new long[] { 4, 5, 3, 5, 4 })]
    [InlineData(10, new long[] { 10, 2, 3, 1 })]
    public void Shortest_schedule_on_three_saws_without_preemption(long optimum, long[] p) =>
        Assert.Equal(optimum, Solved.By(ProblemOf.Makespan(3, p)).Makespan());

    // Pinedo, Scheduling, sec. 5.3, unrelated machines, total completion time (data from memory, optimum by enumeration).
    [Fact]
    public void Total_completion_on_two_unlike_saws()
    {
        ScheduleJob[] jobs = [ProblemOf.Job(1, [4, 8]), ProblemOf.Job(2, [5, 9]), ProblemOf.Job(3, [3, 3])];
        var problem = ProblemOf.WithTardiness([ProblemOf.Saw("S1"), ProblemOf.Saw("S2")], jobs, [0, 0, 0], [1, 1, 1]);
        Assert.Equal(16, Solved.By(problem).CostMicros);
    }

    // Own instance with eligibility and sequence-dependent set-ups; optimum by enumeration. Its families A, B, C are 3, 5 and 4 apart:
    // a section apart from A, a grade group from B, a blade from C. Set-ups before the first jobs, 6 on every saw, shift all times by 6.
    [Fact]
    public void Shortest_schedule_with_set_ups_and_eligibility() =>
        Assert.Equal(6 + 24, Solved.By(ProblemOf.Makespan(FamilySaws, FamilyJobs(new long[6]))).Makespan());

    [Fact]
    public void Weighted_tardiness_with_set_ups_eligibility_and_release_dates() => Assert.Equal(
        13,
        Solved.By(ProblemOf.WithTardiness(
            FamilySaws, FamilyJobs([6, 8, 6, 11, 7, 10]), [16, 15, 18, 22, 31, 20], [1, 2, 1, 4, 1, 2])).CostMicros);

    private static readonly SetUpState A = new("a", "x", "x");
    private static readonly SetUpState B = new("x", "b", "x");
    private static readonly SetUpState C = new("x", "x", "c");

    private static readonly ScheduleSaw[] FamilySaws =
    [
        ProblemOf.Saw("S1") with { SetUpTimes = new(Section: 2, GradeGroup: 1, Blade: 3) },
        ProblemOf.Saw("S2") with { SetUpTimes = new(Section: 2, GradeGroup: 1, Blade: 3) },
    ];

    private static ScheduleJob[] FamilyJobs(long[] release) =>
    [
        ProblemOf.Job(1, [6, 9], release[0], A),
        ProblemOf.Job(2, [8, 5], release[1], A),
        ProblemOf.Job(3, [7, 7], release[2], B),
        ProblemOf.Job(4, [4, 6], release[3], B),
        ProblemOf.Job(5, [9, null], release[4], C),
        ProblemOf.Job(6, [null, 5], release[5], B),
    ];

    // Own instance: working time 12 = 8 + 4, so 16 + 4; jobs that run through fill the first shift with 5 and 3.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Two_shifts_hold_three_jobs(bool mayPause) => Assert.Equal(
        20, Solved.By(Calendar([5, 4, 3], mayPause, new(0, 8), new(16, 24))).Makespan());

    // Own instance; resumable and non-resumable after Lee (1996), J. Global Optimization 9:395-416: 14 = 8 + 6, or one job a shift.
    [Theory]
    [InlineData(true, 22)]
    [InlineData(false, 36)]
    public void Jobs_that_run_through_leave_gaps_before_breaks(bool mayPause, long makespan) => Assert.Equal(
        makespan, Solved.By(Calendar([5, 5, 4], mayPause, new(0, 8), new(16, 24), new(32, 40))).Makespan());

    // A job that may pause is cut into steps of a second.
    private static ScheduleProblem Calendar(long[] p, bool mayPause, params TimeWindow[] windows) => ProblemOf.Makespan(
        [ProblemOf.Saw("S1", windows)],
        [
            .. p.Select((seconds, i) => new ScheduleJob
            {
                JobId = ProblemOf.Id(i + 1),
                Options = [new() { SawId = "S1", SetUp = ProblemOf.AnySetUp, Steps = [new(1000, (int)seconds)], MayPause = mayPause }],
            }),
        ]);
}
