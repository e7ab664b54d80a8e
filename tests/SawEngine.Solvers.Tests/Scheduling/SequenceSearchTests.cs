using SawEngine.Core;
using SawEngine.Core.Scheduling;
using SawEngine.Solvers.Scheduling;
using SawEngine.Solvers.Scheduling.Search;

namespace SawEngine.Solvers.Tests.Scheduling;

public class SequenceSearchTests
{
    [Theory]
    [InlineData(4, 2)]
    [InlineData(5, 1)]
    public void Small_problems_are_solved_to_the_least_cost_of_all_schedules_and_proved(int jobs, int saws)
    {
        foreach (var problem in MachineProblems.Take(24, jobs, saws))
        {
            var schedule = Solved.By(problem);
            Assert.Equal(Exhaustive.Costs(problem).Min(), schedule.CostMicros);
            Assert.Equal(schedule.CostMicros, schedule.BoundMicros);
            Assert.Equal(ScheduleBoundRule.AllSequences, schedule.BoundRule);
        }
    }

    [Fact]
    public void Search_without_proof_finds_what_all_sequences_prove()
    {
        var positive = 0;
        foreach (var problem in MachineProblems.Take(12, jobs: 9, saws: 2))
        {
            var (axis, sequences, meter) = Start(problem, work: 1_000_000);
            var found = SequenceSearch.Run(sequences, meter, 0);
            var value = axis.MakespanRate > 0 ? found.Cost / axis.MakespanRate : found.Cost / ScheduleCost.SecondsPerHour;
            Assert.Equal([], ExactSearch.Below(axis, value, CancellationToken.None));
            var least = ExactSearch.Below(axis, value + 1, CancellationToken.None);
            Assert.Equal(9, least!.Sum(jobs => jobs.Length));
            positive += value > 0 ? 1 : 0;
        }
        Assert.True(positive > 6, $"Only {positive} of 12 problems cost anything.");
    }

    [Fact]
    public void Change_costs_what_it_was_judged_to_cost_and_what_the_clock_says()
    {
        foreach (var problem in MachineProblems.Take(12, jobs: 14, saws: 3))
        {
            var (axis, sequences, _) = Start(problem, work: long.MaxValue);
            var changes = new RandomChanges(sequences, new(1));
            for (var i = 0; i < 2000; i++)
            {
                var (before, allowance) = (sequences.Total(), i % 7 * 20_000L);
                if (changes.Try(allowance))
                    Assert.True(sequences.Total() <= before + allowance);
                else
                    Assert.Equal(before, sequences.Total());
            }
            var copy = new SequencesCopy(sequences);
            var plan = new SawPlan(new Shop(problem)).With([.. Enumerable.Range(0, axis.Saws).Select(saw => Array.ConvertAll(copy.Jobs(saw).ToArray(), job => axis.Index[job]))]);
            Assert.Equal(plan.Score().CostMicros * ScheduleCost.SecondsPerHour, sequences.Cost());
        }
    }

    [Fact]
    public void No_change_that_helps_is_left_after_a_descent()
    {
        foreach (var problem in MachineProblems.Take(6, jobs: 12, saws: 2))
        {
            var (_, sequences, _) = Start(problem, work: long.MaxValue);
            new Neighborhoods(sequences).Descend();
            foreach (var saw in sequences.Saws)
                for (var place = 1; place < saw.Count; place++)
                    Assert.Equal(
                        SawSequence.TooDear,
                        saw.Try(place - 1, [new(saw, place + 1, place + 1), new(saw, place, place)], place + 2, saw.Total));
        }
    }

    [Fact]
    public void Same_larger_problem_has_the_same_schedule()
    {
        foreach (var problem in MachineProblems.Take(3, jobs: 20, saws: 3))
            Assert.Equal(Text(Solved.By(problem)), Text(Solved.By(problem)));

        static string Text(Schedule schedule) => System.Text.Json.JsonSerializer.Serialize(schedule);
    }

    [Fact]
    public void Cancelled_search_of_a_larger_problem_returns_a_clean_schedule()
    {
        foreach (var problem in MachineProblems.Take(6, jobs: 40, saws: 3))
        {
            using var soon = new CancellationTokenSource(TimeSpan.FromMilliseconds(20));
            var schedule = new DispatchScheduler().Solve(problem, Effort.Thorough, soon.Token);
            Assert.Empty(ScheduleVerifier.Verify(problem, schedule));
            Assert.Empty(schedule.Unscheduled);
        }
    }

    [Fact]
    public void Numbers_too_large_to_be_summed_are_left_to_the_clock()
    {
        var problem = ProblemOf.WithTardiness([ProblemOf.Saw("S1")], [ProblemOf.Job(1, [5]), ProblemOf.Job(2, [6])], [0, 0], [long.MaxValue / ProblemOf.PerSecond, 1]);
        var shop = new Shop(problem);
        Assert.Null(AxisShop.Of(shop, new SawPlan(shop).With([[0, 1]])));
        Assert.Equal(ProblemOf.Id(1), Solved.By(problem).Jobs[0].JobId);
    }

    /// <summary>One operator attends one saw at a time: the second job waits for the 100 s of the first, so that 200 s of work lose 100, and each 100 s count as 150.</summary>
    [Fact]
    public void Work_on_the_axes_is_stretched_by_what_the_plan_loses_to_hands()
    {
        var problem = ProblemOf.WithTardiness(
            [ProblemOf.Saw(ProblemOf.SawId(0)), ProblemOf.Saw(ProblemOf.SawId(1))], [ProblemOf.Job(1, [100, null]), ProblemOf.Job(2, [null, 100])], [0, 0], [1, 1]);
        Assert.Equal([100L, 100L], Stretched(problem));
        Assert.Equal([150L, 150L], Stretched(problem with { Operators = [new("O1", [new(0, 10_000)], [.. problem.Saws.Select(saw => saw.SawId)], 1)] }));

        static long[] Stretched(ScheduleProblem problem)
        {
            var shop = new Shop(problem);
            var axis = AxisShop.Of(shop, new SawPlan(shop).With([[0], [1]]))!;
            return [axis.Seconds[0][1], axis.Seconds[1][2]];
        }
    }

    // Pinedo, Scheduling, example of the apparent tardiness cost with set-ups (data from memory, optimum by enumeration).
    [Fact]
    public void Weighted_tardiness_of_four_jobs_with_set_ups_by_pair()
    {
        var (saws, jobs) = MachineProblems.Of(
            [[13], [9], [13], [10]], [[0, 4, 1, 3], [0, 0, 1, 0], [1, 2, 0, 3], [4, 3, 1, 0]], first: [1, 1, 3, 4]);
        Assert.Equal(98, Solved.By(ProblemOf.WithTardiness(saws, jobs, [12, 37, 21, 22], [2, 4, 2, 5])).CostMicros);
    }

    // Own instances with eligibility and set-ups by pair, none before the first job; optimum by enumeration.
    [Fact]
    public void Makespan_and_weighted_tardiness_on_two_unlike_saws_with_set_ups_by_pair()
    {
        long?[][] p = [[6, 9], [8, 5], [7, 7], [4, 6], [9, null], [null, 5]];
        long[][] setUp = [[0, 0, 3, 3, 5, 3], [0, 0, 3, 3, 5, 3], [3, 3, 0, 0, 4, 0], [3, 3, 0, 0, 4, 0], [5, 5, 4, 4, 0, 4], [3, 3, 0, 0, 4, 0]];
        var (saws, jobs) = MachineProblems.Of(p, setUp);
        var shortest = Solved.By(ProblemOf.Makespan(saws, jobs) with { MakespanCostMicrosPerSecond = 1 });
        Assert.Equal((24, 24), (shortest.CostMicros, shortest.BoundMicros));
        (saws, jobs) = MachineProblems.Of(p, setUp, release: [0, 2, 0, 5, 1, 4]);
        Assert.Equal(13, Solved.By(ProblemOf.WithTardiness(saws, jobs, [10, 9, 12, 16, 25, 14], [1, 2, 1, 4, 1, 2])).CostMicros);
    }

    // Graham (1969), SIAM J. Appl. Math. 17:416-429, for four machines, three times over: 27 jobs on 12 saws; the load proves 12.
    [Fact]
    public void Load_of_all_saws_bounds_the_makespan()
    {
        long[] p = [7, 7, 6, 6, 5, 5, 4, 4, 4];
        var schedule = Solved.By(ProblemOf.Makespan(12, [.. p, .. p, .. p]) with { MakespanCostMicrosPerSecond = 1 });
        Assert.Equal((12, 12), (schedule.CostMicros, schedule.BoundMicros));
        Assert.Equal(ScheduleBoundRule.Load, schedule.BoundRule);
    }

    private static (AxisShop Axis, Sequences Sequences, WorkMeter Meter) Start(ScheduleProblem problem, long work)
    {
        var shop = new Shop(problem);
        var plan = Dispatching.Run(shop, new(shop, DispatchRule.EarliestDueDate, ShopAverages.Of(shop)), onQuickestSaw: true, worksOvertime: false);
        var axis = AxisShop.Of(shop, plan)!;
        Assert.True(axis.IsExact);
        var meter = new WorkMeter(work, CancellationToken.None);
        var sequences = new Sequences(axis, meter);
        for (var saw = 0; saw < axis.Saws; saw++)
            sequences.Saws[saw].Set([.. plan.Sequences[saw].Select(job => job + 1)], sequences.NextVersion());
        return (axis, sequences, meter);
    }
}
