using SawEngine.Core.Cautions;
using SawEngine.Core.Quantities;
using SawEngine.Core.Scheduling;

namespace SawEngine.Core.Planning;

/// <summary>Gives each cutting job a saw, a place and times.</summary>
internal sealed class ScheduleStage(PlanProblem problem, IScheduler scheduler, CancellationToken cancellation)
{
    private const decimal Micros = 1_000_000m;

    private readonly Dictionary<string, ScheduleSaw> saws = problem.Saws.ToDictionary(saw => saw.Saw.SawId, saw => saw.Schedule, StringComparer.Ordinal);

    public (ScheduleProblem Problem, Schedule Schedule) Run(IReadOnlyList<JobDraft> jobs)
    {
        var scheduleProblem = new ScheduleProblem
        {
            Saws = problem.Saws.Select(saw => saw.Schedule).ToList(),
            Jobs = jobs.Select(JobOf).OrderBy(job => job.JobId, StringComparer.Ordinal).ToList(),
            Deliveries = DeliveriesOf(jobs),
            Operators = problem.Operators,
            Cranes = problem.Cranes,
            WalkingSeconds = problem.WalkingSeconds,
        };
        return (scheduleProblem, new VerifiedScheduler(scheduler).Solve(scheduleProblem, problem.Effort, cancellation));
    }

    private ScheduleJob JobOf(JobDraft job) => new()
    {
        JobId = job.JobId,
        Release = job.Release,
        Options = job.Settings.Select(setting => OptionOf(job, setting)).ToList(),
    };

    private JobOption OptionOf(JobDraft job, SawSetting setting) => new()
    {
        SawId = setting.Saw.SawId,
        SetUp = new(setting.Group.Section.Designation, setting.Grade.Group, setting.Blade.BladeId),
        Steps = StepsOf(job, setting.Saw.SawId),
        CostMicrosPerSecond = JobOption.MicrosPerSecond(setting.Saw.MachineCostPerHour + problem.Rates.LaborCostPerHour),
        MayRunUnattended = saws[setting.Saw.SawId].Unattended is not null && !CautionRules.IsAttendedOnly(job.Grade),
    };

    /// <summary>The steps between which a saw may stand still: loading a bar or bundle, each pass of the blade with what belongs to it, putting what is left away.</summary>
    private List<StepRun> StepsOf(JobDraft job, string sawId)
    {
        var runs = new List<StepRun>();
        foreach (var (bar, bundle) in job.OnSaw[sawId].SelectMany(bar => bar.Bundles.Select(bundle => (bar, bundle))))
        {
            for (var i = 0; i < bundle.Times; i++)
            {
                Append(runs, bundle.Load.Total, 0, LoadKind(job, bar.Layout.Stock.Length, bundle.Bundle.Bars));
                foreach (var pass in bundle.Passes)
                    Append(runs, pass.Time.Total, pass.BladeShare, StepKind.Cut);
                Append(runs, bundle.RemainderHandling.Total, 0, StepKind.Handling);
            }
        }
        if (runs.Count == 0)
            runs.Add(new(1, 1));
        return runs;
    }

    private StepKind LoadKind(JobDraft job, Length length, int bars)
    {
        var mass = new Mass(job.Grade.Density.Value.MassOf(job.Nest.Group.Section.Area, length).Kilograms * bars);
        return problem.Cranes.Count > 0 && mass > LiftLimits.Default.Crane ? StepKind.CraneLoad : StepKind.Load;
    }

    private static void Append(List<StepRun> runs, decimal seconds, long bladeShare, StepKind kind)
    {
        var step = new StepRun((long)decimal.Ceiling(seconds * 1000m), 1, bladeShare, kind);
        if (step.Milliseconds == 0)
            return;
        if (runs.Count > 0 && runs[^1] with { Count = 1 } == step)
            runs[^1] = runs[^1] with { Count = runs[^1].Count + 1 };
        else
            runs.Add(step);
    }

    private List<Delivery> DeliveriesOf(IReadOnlyList<JobDraft> jobs)
    {
        var jobsOfOrder = jobs.SelectMany(job => job.Bars.SelectMany(bar => bar.Layout.Cuts).Select(cut => (cut.Piece.OrderId, job.JobId))).Distinct()
            .ToLookup(pair => pair.OrderId, pair => pair.JobId, StringComparer.Ordinal);
        return problem.Orders.Where(order => jobsOfOrder.Contains(order.OrderId))
            .Select(order => new Delivery(
                order.OrderId,
                order.Due is { } due ? (long)Math.Floor((due - problem.PlanStart).TotalSeconds) : null,
                (long)decimal.Floor(order.CostPerHourLate.Amount * Micros),
                jobsOfOrder[order.OrderId].Order(StringComparer.Ordinal).ToList()))
            .ToList();
    }
}
