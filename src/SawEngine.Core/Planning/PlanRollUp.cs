using SawEngine.Core.Costs;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Saws;
using SawEngine.Core.Scheduling;
using SawEngine.Core.Times;

namespace SawEngine.Core.Planning;

/// <summary>Puts the results of the stages together to a plan.</summary>
internal sealed class PlanRollUp(
    PlanProblem problem, IReadOnlyList<GroupNest> nests, IReadOnlyList<JobDraft> jobs, IReadOnlyList<BarLayout> refused, Schedule schedule)
{
    private readonly Dictionary<string, ScheduledJob> scheduled = schedule.Jobs.ToDictionary(job => job.JobId, StringComparer.Ordinal);

    private LayoutCost CostRules => new(problem.Remnants, problem.ScrapValueMicrosPerKilogram);

    public Plan Plan()
    {
        var layouts = jobs.SelectMany(LayoutsOf).OrderBy(layout => layout.LayoutId, StringComparer.Ordinal).ToList();
        var cautions = new CautionStage(problem).Run(jobs, scheduled);
        var plannedJobs = jobs.Where(job => scheduled.ContainsKey(job.JobId)).Select(job => JobOf(job, cautions)).OrderBy(job => job.Scheduled.JobId, StringComparer.Ordinal).ToList();
        var orders = OrdersOf(layouts);
        return new()
        {
            Status = StatusOf(orders),
            Orders = orders,
            Jobs = plannedJobs,
            Layouts = layouts,
            Nests = NestsOf(layouts),
            Schedule = schedule,
            Unplaced = UnplacedOf(),
            Unscheduled = schedule.Unscheduled,
            Cautions = cautions.All,
            Claims = layouts.GroupBy(layout => layout.Layout.Stock.StockId, StringComparer.Ordinal)
                .OrderBy(layoutsOfStock => layoutsOfStock.Key, StringComparer.Ordinal)
                .Select(layoutsOfStock => new Claim(layoutsOfStock.Key, layoutsOfStock.Sum(layout => layout.Layout.Repeat)))
                .ToList(),
            Warnings = WarningsOf(plannedJobs, layouts),
            MaterialYield = YieldOf(layouts),
        };
    }

    /// <summary>A job's bars on the saw that cuts them; of an unscheduled job on the first that may.</summary>
    private IReadOnlyList<BarWork> BarsOf(JobDraft job) =>
        scheduled.TryGetValue(job.JobId, out var onSaw) ? job.OnSaw[onSaw.SawId] : job.OnSaw.OrderBy(saw => saw.Key, StringComparer.Ordinal).First().Value;

    private IEnumerable<PlannedLayout> LayoutsOf(JobDraft job) =>
        job.Bars.Zip(BarsOf(job), (bar, work) => (bar.LayoutId, work.Layout)).Select((bar, i) => new PlannedLayout
        {
            LayoutId = bar.LayoutId,
            JobId = job.JobId,
            Sequence = i + 1,
            Layout = bar.Layout,
            SawIds = job.OnSaw.Keys.Order(StringComparer.Ordinal).ToList(),
        });

    private PlannedJob JobOf(JobDraft job, CautionStage.Result cautions)
    {
        var onSaw = scheduled[job.JobId];
        var setting = SettingOf(job, onSaw);
        var bars = job.OnSaw[onSaw.SawId];
        var largest = bars.SelectMany(bar => bar.Bundles).MaxBy(bundle => bundle.Bundle.Bars)?.Bundle ?? CutBundle.Single;
        var mitered = bars.SelectMany(bar => bar.Bundles).SelectMany(bundle => bundle.Passes.Select(pass => (pass.Cut.Face, bundle.Bundle))).Where(pass => !pass.Face.IsSquare).Distinct()
            .Select(pass => setting.CuttingOf(pass.Face, pass.Bundle)!);
        return new()
        {
            Scheduled = onSaw,
            Section = setting.Group.Section.Designation,
            Lay = setting.Lay,
            Grade = setting.Grade.Designation,
            BladeId = setting.Blade.BladeId,
            Bundle = largest,
            Square = setting.CuttingOf(EndCut.Square, largest) ?? setting.CuttingOf(EndCut.Square),
            Mitered = mitered.MaxBy(cutting => cutting.CutSeconds),
            Time = bars.Select(bar => bar.Total).Aggregate(TimeParts.Zero, (sum, bar) => sum + bar),
            SetUpSeconds = ScheduleCost.SetUpSeconds(onSaw),
            CautionIds = cautions.OfJob(job.JobId),
        };
    }

    private static SawSetting SettingOf(JobDraft job, ScheduledJob onSaw) =>
        job.Settings.First(setting => string.Equals(setting.Saw.SawId, onSaw.SawId, StringComparison.Ordinal));

    private List<PlannedOrder> OrdersOf(IReadOnlyList<PlannedLayout> layouts)
    {
        var rollUp = CostsOf();
        var (costs, seconds) = (rollUp.Round(), rollUp.Seconds());
        var cuts = layouts.Where(layout => scheduled.ContainsKey(layout.JobId))
            .SelectMany(layout => layout.Layout.Cuts.Select(cut => (cut.Piece, layout.JobId, layout.Layout.Repeat)))
            .ToLookup(cut => cut.Piece);
        return problem.Orders.Select(OrderOf).ToList();

        PlannedOrder OrderOf(SalesOrder order)
        {
            var lines = order.Lines.Select(line => new PlannedLine
            {
                Line = line,
                Planned = cuts[line.Ref].Sum(cut => cut.Repeat),
                Finish = cuts[line.Ref].Select(cut => (long?)scheduled[cut.JobId].Finish).Max(),
                JobIds = cuts[line.Ref].Select(cut => cut.JobId).Distinct().Order(StringComparer.Ordinal).ToList(),
                Seconds = seconds.GetValueOrDefault(line.Ref),
                Cost = costs.GetValueOrDefault(line.Ref, LineCost.None),
            }).ToList();
            var finish = lines.Max(line => line.Finish);
            var late = finish is { } done && order.Due is { } due ? Math.Max(0, done - (long)Math.Floor((due - problem.PlanStart).TotalSeconds)) : 0;
            return new() { Order = order, Lines = lines, Finish = finish, SecondsLate = late };
        }
    }

    private CostRollUp CostsOf()
    {
        var costs = new CostRollUp(problem);
        foreach (var job in jobs.Where(job => scheduled.ContainsKey(job.JobId)))
        {
            var onSaw = scheduled[job.JobId];
            var setting = SettingOf(job, onSaw);
            var overtime = ScheduleCost.Overtime(problem.Saws.First(saw => saw.Saw.SawId == onSaw.SawId).Schedule, onSaw);
            costs.Add(setting.Saw, setting.Blade, job.OnSaw[onSaw.SawId], ScheduleCost.SetUpSeconds(onSaw), (decimal)overtime / 1_000_000m);
        }
        return costs;
    }

    private List<PlannedNest> NestsOf(IReadOnlyList<PlannedLayout> layouts)
    {
        var byNest = jobs.ToLookup(job => job.Nest, job => job.JobId, ReferenceEqualityComparer.Instance as IEqualityComparer<GroupNest>);
        var byJob = layouts.ToLookup(layout => layout.JobId, StringComparer.Ordinal);
        return nests.Select(nest =>
        {
            var own = byNest[nest].SelectMany(jobId => byJob[jobId]).OrderBy(layout => layout.LayoutId, StringComparer.Ordinal).ToList();
            var value = own.Sum(layout => CostRules.Micros(layout.Layout) + nest.HandlingMicrosPerBar * layout.Layout.Repeat);
            return new PlannedNest
            {
                Section = nest.Group.Section.Designation,
                Grade = GradesOf(nest.Group)[0],
                JoinedGrades = GradesOf(nest.Group)[1..],
                LayoutIds = own.Select(layout => layout.LayoutId).ToList(),
                Status = own.Count == 0 ? NestStatus.Infeasible
                    : nest.Unplaced.Any(pieces => !pieces.IsAccepted) ? NestStatus.Partial
                    : nest.Unplaced.Count == 0 && value <= nest.BoundMicros ? NestStatus.Optimal
                    : NestStatus.Feasible,
                ValueMicros = value,
                BoundMicros = Math.Min(nest.BoundMicros, value),
                // A proof for the widest saw proves nothing of the others.
                StoppedBy = nest.StoppedBy == StoppedBy.Proof && value > nest.BoundMicros ? StoppedBy.Effort : nest.StoppedBy,
            };
        }).ToList();
    }

    /// <summary>The first of the grades ordered, then the others that are ordered or of which bars may serve, ordinal.</summary>
    private static List<string> GradesOf(CuttingGroup group)
    {
        var first = group.Lines.Select(line => line.Grade!.Designation).Min(StringComparer.Ordinal)!;
        return [first, .. group.Grades.Concat(group.Lines.Select(line => line.Grade!)).Select(grade => grade.Designation).Where(grade => grade != first).Distinct().Order(StringComparer.Ordinal)];
    }

    private List<UnplacedPieces> UnplacedOf()
    {
        var lines = problem.Orders.SelectMany(order => order.Lines).ToDictionary(line => line.Ref);
        return nests.SelectMany(nest => nest.Unplaced)
            .Concat(refused.SelectMany(layout => layout.Cuts.Select(cut => new UnplacedPieces(cut.Piece, layout.Repeat, UnplacedReason.NotVerified))))
            .GroupBy(pieces => pieces.Piece)
            .Select(pieces => UnplacedPieces.Of(lines[pieces.Key], pieces.Sum(one => one.Quantity), (pieces.FirstOrDefault(one => !one.IsAccepted) ?? pieces.First()).Reason))
            .OrderBy(pieces => pieces.Piece)
            .ToList();
    }

    private static PlanStatus StatusOf(IReadOnlyList<PlannedOrder> orders)
    {
        var lines = orders.SelectMany(order => order.Lines).ToList();
        return lines.All(line => line.Planned >= line.Line.Quantity - line.Line.Under) ? PlanStatus.Complete
            : lines.All(line => line.Planned == 0) ? PlanStatus.None
            : PlanStatus.Partial;
    }

    private List<Warning> WarningsOf(IReadOnlyList<PlannedJob> plannedJobs, IReadOnlyList<PlannedLayout> layouts) =>
        plannedJobs.SelectMany(job => job.Square.Warnings.Concat(job.Mitered?.Warnings ?? []).DistinctBy(warning => warning.Code)
                .Select(warning => new Warning(warning.Code, warning.Detail, job.Scheduled.JobId)))
            .Concat(TolerancesNotHeld())
            .Concat(OverdueOrders())
            .Concat(RemnantsNotKept(layouts))
            .OrderBy(warning => warning.Code, StringComparer.Ordinal).ThenBy(warning => warning.OrderId, StringComparer.Ordinal).ThenBy(warning => warning.JobId, StringComparer.Ordinal)
            .ToList();

    private IEnumerable<Warning> TolerancesNotHeld()
    {
        var stage = new ToleranceStage(problem);
        return jobs.Where(job => scheduled.ContainsKey(job.JobId))
            .SelectMany(job => stage.Of(job.JobId, problem.Saws.First(saw => saw.Saw.SawId == scheduled[job.JobId].SawId).Saw, BarsOf(job)));
    }

    private IEnumerable<Warning> OverdueOrders() =>
        problem.Orders.Where(order => order.Due < problem.PlanStart)
            .Select(order => new Warning("order_overdue", $"Order {order.OrderId} was due before the plan starts.", OrderId: order.OrderId));

    private IEnumerable<Warning> RemnantsNotKept(IReadOnlyList<PlannedLayout> layouts) =>
        RemnantLimit.NotKept(layouts.Select(layout => layout.Layout), CostRules) is var notKept and > 0
            ? [new Warning(RemnantLimit.Reached, $"Remainders that are long enough to be kept, but count as scrap because no more remnants may be left: {notKept}.")]
            : [];

    private static decimal YieldOf(IReadOnlyList<PlannedLayout> layouts)
    {
        var used = layouts.Sum(layout => Mass(layout, layout.Layout.Stock.Length) * layout.Layout.Repeat);
        var kept = layouts.Sum(layout => layout.Layout.Repeat * (layout.Layout.Cuts.Sum(cut => Mass(layout, cut.Centerline))
            + (layout.Layout.Remainder.Kind == RemainderKind.Remnant ? Mass(layout, layout.Layout.Remainder.Length) : 0m)));
        return used == 0m ? 0m : kept / used;

        static decimal Mass(PlannedLayout layout, Quantities.Length length) =>
            layout.Layout.Stock.Grade!.Density.Value.MassOf(layout.Layout.Stock.Section!.Area, length).Kilograms;
    }
}
