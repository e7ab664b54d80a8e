using SawEngine.Core;
using SawEngine.Core.Planning;
using SawEngine.Core.Scheduling;
using SawEngine.Solvers.Nesting;
using static SawEngine.Solvers.Tests.Planning.Workshop;

namespace SawEngine.Solvers.Tests.Planning;

/// <summary>What the planner hands to the scheduler.</summary>
public class ScheduleStageTests
{
    private static readonly UnattendedRuns Nights = new([new(28_800, 86_400)], 2, 100);

    [Fact]
    public void Saws_operators_and_cranes_are_those_of_the_plan()
    {
        var problem = Problem();
        problem = problem with
        {
            Saws = [problem.Saws[0] with { Schedule = problem.Saws[0].Schedule with { Unattended = Nights } }, problem.Saws[1]],
            Operators = [new("ann", problem.Saws[0].Schedule.Windows, ["saw-1", "saw-2"], 2)],
            Cranes = [new("north", ["saw-1"])],
            WalkingSeconds = 30,
        };
        var given = Given(problem);
        Assert.Equal(problem.Saws.Select(saw => saw.Schedule), given.Saws);
        Assert.Same(problem.Operators, given.Operators);
        Assert.Same(problem.Cranes, given.Cranes);
        Assert.Equal(30, given.WalkingSeconds);
    }

    [Fact]
    public void Steps_are_loads_cuts_and_handling_in_turn()
    {
        // Four bars of 6 m for 20 pieces of 1.1 m: each is loaded, cut five times, and its remainder of some 0.5 m put away.
        var problem = Bundles.Of(new(1, 1), Line("SO-1", "10", "Flat 50x10", "S235JR", 1_100, 20));
        var steps = Assert.Single(Given(problem).Jobs).Options[0].Steps;
        Assert.Equal([StepKind.Load, StepKind.Cut, StepKind.Handling], steps.Take(3).Select(run => run.Kind));
        Assert.Equal(
            [(StepKind.Load, 4), (StepKind.Cut, 20), (StepKind.Handling, 4)],
            steps.GroupBy(run => run.Kind).Select(runs => (runs.Key, runs.Sum(run => run.Count))));
        Assert.All(steps, run => Assert.Equal(run.Kind == StepKind.Cut, run.BladeShare > 0));
    }

    /// <summary>A flat of 50 x 10, 6 m long, has 23.55 kg, six of them 141 kg; a round of 100, 6 m long, 370 kg. Above 50 kg a crane lifts.</summary>
    [Theory]
    [InlineData("Flat 50x10", 1, false)]
    [InlineData("Flat 50x10", 6, true)]
    [InlineData("Round 100", 1, true)]
    public void Heavy_bars_and_bundles_are_loaded_by_crane_where_there_is_one(string section, int bars, bool byCrane)
    {
        var problem = Bundles.Of(bars == 1 ? new(1, 1) : null, Line("SO-1", "10", section, "S235JR", 1_100, 30));
        Assert.Equal(byCrane ? StepKind.CraneLoad : StepKind.Load, LoadKind(problem with { Cranes = [new("north", ["saw-2"])] }));
        Assert.Equal(StepKind.Load, LoadKind(problem));

        static StepKind LoadKind(PlanProblem problem) => Given(problem).Jobs[0].Options[0].Steps[0].Kind;
    }

    /// <summary>Titanium, and magnesium with its chips that burn, are cut attended whatever the saw could do.</summary>
    [Theory]
    [InlineData("S235JR", true)]
    [InlineData("Ti-6Al-4V", false)]
    [InlineData("AZ31B", false)]
    public void Only_grades_that_may_run_unattended_do(string grade, bool may)
    {
        var problem = Bundles.Of(new(1, 1), Line("SO-1", "10", "Round 50", grade, 200, 5));
        var saw = problem.Saws[0];
        Assert.Equal(may, MayRun(problem with { Saws = [saw with { Schedule = saw.Schedule with { Unattended = Nights } }] }));
        Assert.False(MayRun(problem));

        static bool MayRun(PlanProblem problem) => Given(problem).Jobs[0].Options[0].MayRunUnattended;
    }

    private static ScheduleProblem Given(PlanProblem problem)
    {
        var scheduler = new Noted();
        new Planner(new ColumnNester(), scheduler).Plan(problem, CancellationToken.None);
        return scheduler.Problem!;
    }

    private sealed class Noted : IScheduler
    {
        public ScheduleProblem? Problem { get; private set; }

        public Schedule Solve(ScheduleProblem problem, Effort effort, CancellationToken cancellation)
        {
            Problem = problem;
            return Schedule.Nothing with { Unscheduled = [.. problem.Jobs.Select(job => new UnscheduledJob(job.JobId, UnscheduledReason.NoShift))] };
        }
    }
}
