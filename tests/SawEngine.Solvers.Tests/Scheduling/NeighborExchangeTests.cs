using SawEngine.Core.Scheduling;
using SawEngine.Solvers.Scheduling;
using SawEngine.Solvers.Scheduling.Search;

namespace SawEngine.Solvers.Tests.Scheduling;

/// <summary>The one pass over the ends of the second block against each exchange made and summed from the start.</summary>
public class NeighborExchangeTests
{
    [Theory]
    [InlineData(false, false)]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [InlineData(true, true)]
    public void First_end_that_helps_is_found_and_none_is_missed(bool hasBreaks, bool paysSetUps)
    {
        var (better, none) = (0, 0);
        foreach (var problem in MachineProblems.Take(12, jobs: 12, saws: 1))
        {
            var saw = Sequence(Changed(problem, hasBreaks, paysSetUps));
            for (var first = 1; first < saw.Count; first++)
                for (var second = first + 1; second <= saw.Count; second++)
                {
                    var last = NeighborExchange.Find(saw, first, second, saw.Count);
                    Assert.Equal(FirstThatHelps(saw, first, second), last);
                    (better, none) = last > 0 ? (better + 1, none) : (better, none + 1);
                }
        }
        Assert.True(better > 100 && none > 100, $"{better} better, {none} not.");
    }

    [Fact]
    public void Nothing_beyond_the_farthest_place_is_looked_at()
    {
        foreach (var problem in MachineProblems.Take(6, jobs: 12, saws: 1))
        {
            var saw = Sequence(problem);
            for (var first = 1; first < saw.Count; first++)
                if (FirstThatHelps(saw, first, first + 1) is > 0 and var last)
                    Assert.Equal((0, last), (NeighborExchange.Find(saw, first, first + 1, last - 1), NeighborExchange.Find(saw, first, first + 1, last)));
        }
    }

    private static int FirstThatHelps(SawSequence saw, int first, int second)
    {
        var other = new SawSequence(saw.Numbers);
        other.Use(saw.Penalty);
        var jobs = saw.Jobs.AsSpan(1, saw.Count).ToArray();
        for (var last = second; last <= saw.Count; last++)
        {
            other.Set([.. jobs[..(first - 1)], .. jobs[(second - 1)..last], .. jobs[(first - 1)..(second - 1)], .. jobs[last..]], last);
            if (other.Total < saw.Total)
                return last;
        }
        return 0;
    }

    private static ScheduleProblem Changed(ScheduleProblem problem, bool hasBreaks, bool paysSetUps) => problem with
    {
        Saws = [.. problem.Saws.Select(saw => hasBreaks ? saw with { Windows = [.. Enumerable.Range(0, 40).Select(i => new TimeWindow(100 * i, (100 * i) + 70))] } : saw)],
        Jobs = [.. problem.Jobs.Select(job => job with { Options = [.. job.Options.Select(option => paysSetUps ? option with { SetUpCostMicrosPerSecond = 3 } : option)] })],
    };

    /// <summary>All jobs in the order in which they are listed.</summary>
    private static SawSequence Sequence(ScheduleProblem problem)
    {
        var shop = new Shop(problem);
        var jobs = Enumerable.Range(0, shop.Jobs.Length).ToArray();
        var plan = new SawPlan(shop).With([jobs]);
        Assert.Equal(0, plan.Score().Unscheduled);
        var sequences = new Sequences(AxisShop.Of(shop, plan)!, new(long.MaxValue, CancellationToken.None));
        sequences.Saws[0].Set([.. jobs.Select(job => job + 1)], sequences.NextVersion());
        sequences.Aim(sequences.Makespan());
        return sequences.Saws[0];
    }
}
