using SawEngine.Core.Scheduling;

namespace SawEngine.Core.Planning;

/// <summary>Gives each cutting job a saw, a place and times.</summary>
internal sealed class ScheduleStage(PlanProblem problem, IScheduler scheduler, CancellationToken cancellation)
{
    private const decimal Micros = 1_000_000m;

    public Schedule Run(IReadOnlyList<JobDraft> jobs)
    {
        var scheduleProblem = new ScheduleProblem
        {
            Saws = problem.Saws.Select(saw => ScheduleSaw.Of(saw.Saw, saw.Windows)).ToList(),
            Jobs = jobs.Select(JobOf).OrderBy(job => job.JobId, StringComparer.Ordinal).ToList(),
            Deliveries = DeliveriesOf(jobs),
        };
        return new VerifiedScheduler(scheduler).Solve(scheduleProblem, problem.Effort, cancellation);
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
        Steps = StepsOf(job.OnSaw[setting.Saw.SawId]),
        CostMicrosPerSecond = JobOption.MicrosPerSecond(setting.Saw.MachineCostPerHour + problem.Rates.LaborCostPerHour),
    };

    /// <summary>The steps between which a saw may stand still: loading a bar or bundle, each pass of the blade with what belongs to it, putting what is left away.</summary>
    private static List<StepRun> StepsOf(IReadOnlyList<BarWork> bars)
    {
        var runs = new List<StepRun>();
        foreach (var bundle in bars.SelectMany(bar => bar.Bundles))
        {
            for (var i = 0; i < bundle.Times; i++)
            {
                Append(runs, bundle.Load.Total, 0);
                foreach (var pass in bundle.Passes)
                    Append(runs, pass.Time.Total, pass.BladeShare);
                Append(runs, bundle.RemainderHandling.Total, 0);
            }
        }
        if (runs.Count == 0)
            runs.Add(new(1, 1));
        return runs;
    }

    private static void Append(List<StepRun> runs, decimal seconds, long bladeShare)
    {
        var milliseconds = (long)decimal.Ceiling(seconds * 1000m);
        if (milliseconds == 0)
            return;
        if (runs.Count > 0 && runs[^1].Milliseconds == milliseconds && runs[^1].BladeShare == bladeShare)
            runs[^1] = runs[^1] with { Count = runs[^1].Count + 1 };
        else
            runs.Add(new(milliseconds, 1, bladeShare));
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
