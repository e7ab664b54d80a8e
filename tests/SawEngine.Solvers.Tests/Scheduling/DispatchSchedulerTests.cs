using SawEngine.Core;
using SawEngine.Core.Scheduling;
using SawEngine.Solvers.Scheduling;
using SawEngine.Tests.Scheduling;

namespace SawEngine.Solvers.Tests.Scheduling;

/// <summary>What every scheduler has to keep, over many problems.</summary>
public class DispatchSchedulerTests
{
    [Theory]
    [InlineData(Effort.Quick, 300)]
    [InlineData(Effort.Standard, 100)]
    public void Schedules_are_clean_by_the_verifier(Effort effort, int problems)
    {
        var scheduled = 0;
        foreach (var problem in RandomProblems.Take(problems, maxJobs: 12, maxSaws: 3))
            scheduled += Solved.By(problem, effort).Jobs.Count;
        Assert.True(scheduled > 2 * problems, $"Only {scheduled} jobs were scheduled: the problems are too hard to show anything.");
    }

    [Fact]
    public void Each_rule_alone_gives_clean_schedules()
    {
        foreach (var problem in RandomProblems.Take(50, maxJobs: 12, maxSaws: 3))
            foreach (var rule in Enum.GetValues<DispatchRule>())
                Solved.By(problem, Effort.Quick, rule);
    }

    [Fact]
    public void Clock_agrees_with_placing_step_by_step()
    {
        foreach (var problem in RandomProblems.Take(300, maxJobs: 12, maxSaws: 3))
            foreach (var saw in Solved.By(problem, Effort.Quick).Jobs.GroupBy(job => job.SawId))
            {
                var sequence = saw.Select(job => problem.Jobs.Single(other => other.JobId == job.JobId));
                var expected = PlainClock.Place(problem.Saws.Single(other => other.SawId == saw.Key), sequence);
                Assert.NotNull(expected);
                foreach (var (job, other) in saw.Zip(expected))
                {
                    Assert.Equal(other.SetUps, job.SetUps);
                    Assert.Equal(other.Work, job.Work);
                }
            }
    }

    [Fact]
    public void More_effort_is_never_worse()
    {
        foreach (var problem in RandomProblems.Take(50, maxJobs: 10, maxSaws: 3))
        {
            var (quick, standard) = (Solved.By(problem, Effort.Quick), Solved.By(problem, Effort.Standard));
            Assert.True(standard.Unscheduled.Count <= quick.Unscheduled.Count);
            Assert.True(standard.Unscheduled.Count < quick.Unscheduled.Count || standard.CostMicros <= quick.CostMicros);
        }
    }

    /// <summary>With operators, overtime and an earlier schedule, where the search judges by times that are not those of the clock.</summary>
    [Theory]
    [InlineData(1416)]
    [InlineData(9800)]
    public void More_effort_is_never_worse_in_a_whole_shop(int seed)
    {
        var costs = Enum.GetValues<Effort>().Select(effort => Solved.By(RandomShop.Of(seed), effort).CostMicros).ToList();
        Assert.Equal(costs.OrderDescending(), costs);
    }

    [Fact]
    public void Order_of_the_lists_does_not_matter()
    {
        foreach (var problem in RandomProblems.Take(30, maxJobs: 8, maxSaws: 3))
        {
            var turned = new ScheduleProblem
            {
                Saws = [.. problem.Saws.Reverse()],
                Jobs = [.. problem.Jobs.Reverse().Select(job => job with { Options = [.. job.Options.Reverse()] })],
                Deliveries = [.. problem.Deliveries.Reverse().Select(item => item with { JobIds = [.. item.JobIds.Reverse()] })],
            };
            AssertSame(Solved.By(problem), Solved.By(turned));
        }
    }

    [Fact]
    public void Same_problem_has_the_same_schedule()
    {
        foreach (var problem in RandomProblems.Take(10, maxJobs: 12, maxSaws: 3))
            AssertSame(Solved.By(problem), Solved.By(problem));
    }

    [Fact]
    public void Cancelled_search_returns_the_best_so_far()
    {
        foreach (var problem in RandomProblems.Take(50, maxJobs: 12, maxSaws: 3))
        {
            var schedule = new DispatchScheduler().Solve(problem, Effort.Thorough, new CancellationToken(canceled: true));
            Assert.Empty(ScheduleVerifier.Verify(problem, schedule));
        }
    }

    /// <summary>All sequences of the same jobs, placed step by step and verified: none costs less than the bound says.</summary>
    [Fact]
    public void Bound_holds_against_every_sequence()
    {
        var (problems, tight, near) = (0, 0, 0);
        foreach (var problem in RandomProblems.Take(150, maxJobs: 4, maxSaws: 2))
        {
            var schedule = Solved.By(problem);
            var left = schedule.Unscheduled.Select(job => job.JobId).ToHashSet();
            var kept = problem with { Jobs = [.. problem.Jobs.Where(job => !left.Contains(job.JobId))] };
            var costs = Exhaustive.Costs(kept).ToList();
            Assert.Equal(costs.Min(), schedule.CostMicros);
            Assert.InRange(schedule.BoundMicros, 0, costs.Min());
            problems++;
            near += schedule.BoundMicros * 2 >= costs.Min() && costs.Min() > 0 ? 1 : 0;
            tight += schedule.BoundMicros == costs.Min() && costs.Min() > 0 ? 1 : 0;
        }
        Assert.True(tight * 4 > problems && near * 3 > problems * 2, $"Tight in {tight}, near in {near} of {problems} problems: too weak to be tested.");
    }

    private static void AssertSame(Schedule expected, Schedule actual)
    {
        Assert.Equal(Text(expected), Text(actual));

        static string Text(Schedule schedule) => System.Text.Json.JsonSerializer.Serialize(schedule);
    }
}
