using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Planning;

/// <summary>
/// Checks a whole plan against the request, by arithmetic of its own: what the stages of the planner hand to one another is counted again from the answer.
/// </summary>
public static class PlanVerifier
{
    /// <summary>The rules that the plan breaks; none for a plan that may leave.</summary>
    public static IReadOnlyList<Violation> Verify(PlanProblem problem, Plan plan)
    {
        var violations = new List<Violation>();
        CheckIds(plan, violations);
        CheckPieces(problem, plan, violations);
        CheckLayouts(problem, plan, violations);
        CheckStock(problem, plan, violations);
        CheckRemnants(problem, plan, violations);
        CheckJobs(problem, plan, violations);
        CheckOrders(problem, plan, violations);
        CheckCosts(problem, plan, violations);
        CheckStatus(plan, violations);
        return violations;
    }

    private static void CheckIds(Plan plan, List<Violation> violations)
    {
        Unique(plan.Layouts.Select(layout => layout.LayoutId), violations);
        Unique(plan.Jobs.Select(job => job.Scheduled.JobId).Concat(plan.Unscheduled.Select(job => job.JobId)), violations);
    }

    private static void Unique(IEnumerable<string> ids, List<Violation> violations)
    {
        foreach (var id in ids.GroupBy(id => id, StringComparer.Ordinal).Where(same => same.Skip(1).Any()))
            violations.Add(new(PlanRule.DuplicateId, $"{id.Key} occurs twice."));
    }

    private static void CheckPieces(PlanProblem problem, Plan plan, List<Violation> violations)
    {
        var unplaced = plan.Unplaced.ToLookup(pieces => pieces.Piece, pieces => pieces.Quantity);
        var placed = CountPieces(plan.Layouts);
        foreach (var line in problem.Orders.SelectMany(order => order.Lines))
        {
            var onBars = placed.GetValueOrDefault(line.Ref);
            var over = unplaced.Contains(line.Ref) ? 0 : onBars - line.Quantity;
            if (onBars + unplaced[line.Ref].Sum() - Math.Clamp(over, 0, line.Over) != line.Quantity || unplaced[line.Ref].Any(quantity => quantity < 1))
                violations.Add(new(PlanRule.PieceNotAccounted, $"{line.Ref}: {line.Quantity} ordered, {onBars} on bars, {unplaced[line.Ref].Sum()} unplaced."));
        }
        var known = problem.Orders.SelectMany(order => order.Lines).Select(line => line.Ref).ToHashSet();
        foreach (var stranger in plan.Layouts.SelectMany(layout => layout.Layout.Cuts).Where(cut => !known.Contains(cut.Piece)))
            violations.Add(new(PlanRule.PieceNotAccounted, $"{stranger.Piece} is not ordered."));
    }

    private static Dictionary<PieceRef, int> CountPieces(IEnumerable<PlannedLayout> layouts)
    {
        var counts = new Dictionary<PieceRef, int>();
        foreach (var layout in layouts)
        {
            foreach (var cut in layout.Layout.Cuts)
                counts[cut.Piece] = counts.GetValueOrDefault(cut.Piece) + layout.Layout.Repeat;
        }
        return counts;
    }

    private static void CheckLayouts(PlanProblem problem, Plan plan, List<Violation> violations)
    {
        var jobs = plan.Jobs.ToDictionary(job => job.Scheduled.JobId, StringComparer.Ordinal);
        var lines = problem.Orders.SelectMany(order => order.Lines).ToLookup(line => line.Ref);
        var stock = problem.Stock.ToLookup(item => item.StockId, StringComparer.Ordinal);
        var unscheduled = plan.Unscheduled.Select(job => job.JobId).ToHashSet(StringComparer.Ordinal);
        foreach (var layout in plan.Layouts)
        {
            if (!jobs.TryGetValue(layout.JobId, out var job))
            {
                if (!unscheduled.Contains(layout.JobId))
                    violations.Add(new(PlanRule.LayoutWithoutJob, $"{layout.LayoutId} names the job {layout.JobId}."));
                continue;
            }
            if (!layout.SawIds.Contains(job.Scheduled.SawId, StringComparer.Ordinal))
                violations.Add(new(PlanRule.SawNotAllowed, $"{layout.LayoutId} is not valid for {job.Scheduled.SawId}."));
            if (layout.Layout.Stock.Section?.Designation != job.Section || layout.Layout.Stock.Grade?.Designation != job.Grade)
                violations.Add(new(PlanRule.JobMaterial, $"{layout.LayoutId} is of {layout.Layout.Stock.Grade?.Designation}, {job.Scheduled.JobId} of {job.Grade}."));
            violations.AddRange(LayoutViolations(problem, layout, job, lines, stock));
        }
    }

    /// <summary>The nest verifier again, under the rules of the very saw and blade that cut the layout, built here from the request.</summary>
    private static IEnumerable<Violation> LayoutViolations(
        PlanProblem problem, PlannedLayout layout, PlannedJob job, ILookup<PieceRef, OrderLine> lines, ILookup<string, StockItem> stock)
    {
        var saw = problem.Saws.FirstOrDefault(planSaw => planSaw.Saw.SawId == job.Scheduled.SawId)?.Saw;
        var blade = saw?.Blades.FirstOrDefault(one => one.BladeId == job.BladeId);
        if (saw is null || blade is null)
            return [new(PlanRule.BladeNotOnSaw, $"{job.Scheduled.JobId} runs with {job.BladeId} on {job.Scheduled.SawId}.")];
        var nestProblem = new NestProblem
        {
            Lines = layout.Layout.Cuts.Select(cut => cut.Piece).Distinct().SelectMany(piece => lines[piece]).ToList(),
            Stock = stock[layout.Layout.Stock.StockId].ToList(),
            Remnants = problem.Remnants,
            ScrapValueMicrosPerKilogram = problem.StockIsCosted ? decimal.ToInt64(decimal.Truncate(problem.Rates.ScrapValuePerKilogram.Amount * 1_000_000m)) : 0,
            Rules = new()
            {
                Kerf = blade.Kerf,
                Trim = problem.Trim,
                Tail = saw.Tail,
                ShortestPiece = saw.ShortestPiece,
                LongestPiece = saw.LongestPiece,
                ThinnestSlice = saw.ThinnestSlice,
                LoadLimit = saw.LoadLimit,
                Capacity = saw.Capacity,
                MiterRange = saw.MiterRange,
                Bundle = saw.Bundle,
            },
        };
        var violations = NestVerifier.VerifyLayout(nestProblem, layout.Layout);
        return violations.Count > 0 || Lies(layout.Layout, job, saw) ? violations
            : [new(PlanRule.BundleDoesNotLieSo, $"{layout.LayoutId} is cut {layout.Layout.Bundle.Wide} wide and {layout.Layout.Bundle.High} high on {saw.SawId}.")];
    }

    /// <summary>Whether a bundle fits as the bars lie; along the blade an inclined cut is longer by the cosine of its angle.</summary>
    private static bool Lies(BarLayout layout, PlannedJob job, Saw saw)
    {
        if (layout.Bundle.Bars <= 1)
            return true;
        var isOnSide = job.Lay.QuarterTurns % 2 == 1;
        var (width, height) = ((double)layout.Stock.Section!.Width.Nanometers, (double)layout.Stock.Section.Height.Nanometers);
        var steepest = layout.Cuts.SelectMany(cut => new[] { cut.StartCut, cut.EndCut }).Max(face => Math.Abs(isOnSide ? face.HeightAngle.Millidegrees : face.WidthAngle.Millidegrees));
        var wide = (isOnSide ? height : width) * layout.Bundle.Wide / Math.Cos(steepest / 180_000d * Math.PI);
        var high = (isOnSide ? width : height) * layout.Bundle.High;
        return wide <= Length.Min(saw.Capacity.Width, saw.Bundle?.LargestWidth ?? saw.Capacity.Width).Nanometers + 2
            && high <= Length.Min(saw.Capacity.Height, saw.Bundle?.LargestHeight ?? saw.Capacity.Height).Nanometers;
    }

    private static void CheckStock(PlanProblem problem, Plan plan, List<Violation> violations)
    {
        var used = plan.Layouts.GroupBy(layout => layout.Layout.Stock.StockId, StringComparer.Ordinal)
            .ToDictionary(layouts => layouts.Key, layouts => layouts.Sum(layout => layout.Layout.Repeat), StringComparer.Ordinal);
        foreach (var item in problem.Stock)
        {
            if (used.GetValueOrDefault(item.StockId) > item.Quantity)
                violations.Add(new(PlanRule.StockOverused, $"{item.StockId}: {used[item.StockId]} used of {item.Quantity}."));
        }
        var claimed = plan.Claims.Select(claim => (claim.StockId, claim.Quantity)).OrderBy(claim => claim.StockId, StringComparer.Ordinal);
        if (!claimed.SequenceEqual(used.Select(item => (StockId: item.Key, Quantity: item.Value)).OrderBy(item => item.StockId, StringComparer.Ordinal)))
            violations.Add(new(PlanRule.ClaimsWrong, "The claims are not the stock that the layouts use."));
    }

    private static void CheckRemnants(PlanProblem problem, Plan plan, List<Violation> violations)
    {
        if (problem.Remnants?.MostNew is not { } most)
            return;
        foreach (var nest in plan.Layouts.Where(layout => layout.Layout.Remainder.Kind == RemainderKind.Remnant && layout.Layout.Stock.Zones.All(zone => zone.Kind != ZoneKind.Reserved))
            .GroupBy(layout => (layout.Layout.Stock.Section?.Designation, layout.Layout.Stock.Grade?.Designation)))
        {
            var left = nest.Sum(layout => (long)layout.Layout.Repeat);
            if (left > most)
                violations.Add(new(PlanRule.TooManyRemnants, $"{left} remnants of {nest.Key} are left, at most {most} may be."));
        }
    }

    private static void CheckJobs(PlanProblem problem, Plan plan, List<Violation> violations)
    {
        var orders = problem.Orders.ToDictionary(order => order.OrderId, StringComparer.Ordinal);
        var byJob = plan.Layouts.ToLookup(layout => layout.JobId, layout => layout.Layout, StringComparer.Ordinal);
        foreach (var job in plan.Jobs)
        {
            var layouts = byJob[job.Scheduled.JobId].ToList();
            var start = problem.PlanStart.AddSeconds(job.Scheduled.Start);
            var released = layouts.SelectMany(layout => layout.Cuts).All(cut => orders.TryGetValue(cut.Piece.OrderId, out var order) && !(order.Release > start));
            var delivered = layouts.All(layout => layout.Stock.Kind != StockKind.Purchasable || job.Scheduled.Start >= layout.Stock.LeadDays * 86_400L);
            if (!released || !delivered)
                violations.Add(new(PlanRule.StartsBeforeRelease, $"{job.Scheduled.JobId} starts before its orders are released or its material is there."));
            var worked = job.Scheduled.Work.Sum(span => span.Finish - span.Start);
            var roundedUp = job.Scheduled.Work.Count + layouts.Sum(layout => (layout.Cuts.Count * 2 + 3) * layout.Repeat) / 1000m;
            if (worked < job.Time.Total || worked > job.Time.Total + roundedUp)
                violations.Add(new(PlanRule.DurationWrong, $"{job.Scheduled.JobId}: {worked} s in the schedule for {job.Time.Total} s of work."));
            CheckCycles(problem, job, layouts, violations);
        }
    }

    private static void CheckCycles(PlanProblem problem, PlannedJob job, List<BarLayout> layouts, List<Violation> violations)
    {
        if (problem.Saws.FirstOrDefault(planSaw => planSaw.Saw.SawId == job.Scheduled.SawId)?.Saw is not { } saw || saw.Blades.FirstOrDefault(blade => blade.BladeId == job.BladeId) is not { } blade)
            return;
        var clamped = layouts.Sum(layout => LayoutCheck.Passes(layout, blade.Kerf) * decimal.Ceiling((decimal)layout.Repeat / Math.Max(1, layout.Bundle.Bars)));
        if (job.Time.Clamp != clamped * saw.Times.ClampSecondsPerCut)
            violations.Add(new(PlanRule.CyclesWrong, $"{job.Scheduled.JobId}: {job.Time.Clamp} s of clamping for {clamped} passes."));
    }

    private static void CheckOrders(PlanProblem problem, Plan plan, List<Violation> violations)
    {
        var finishes = plan.Jobs.ToDictionary(job => job.Scheduled.JobId, job => job.Scheduled.Work.Max(span => span.Finish), StringComparer.Ordinal);
        var scheduled = plan.Layouts.Where(layout => finishes.ContainsKey(layout.JobId)).ToList();
        var planned = CountPieces(scheduled);
        var pieceFinishes = scheduled.SelectMany(layout => layout.Layout.Cuts.Select(cut => (cut.Piece, Finish: finishes[layout.JobId])))
            .ToLookup(cut => cut.Piece, cut => cut.Finish);
        foreach (var order in plan.Orders)
        {
            foreach (var line in order.Lines)
            {
                if (line.Planned != planned.GetValueOrDefault(line.Line.Ref))
                    violations.Add(new(PlanRule.PlannedCount, $"{line.Line.Ref}: {line.Planned} said to be planned."));
                if (line.Finish != pieceFinishes[line.Line.Ref].Select(finish => (long?)finish).Max())
                    violations.Add(new(PlanRule.FinishWrong, $"{line.Line.Ref} is not finished when its last job is."));
            }
            var late = order.Finish is { } finish && order.Order.Due is { } due
                ? Math.Max(0, finish - (long)Math.Floor((due - problem.PlanStart).TotalSeconds))
                : 0;
            if (order.Finish != order.Lines.Max(line => line.Finish) || order.SecondsLate != late)
                violations.Add(new(PlanRule.FinishWrong, $"{order.Order.OrderId}: finish or lateness is not that of its lines."));
        }
    }

    private static void CheckCosts(PlanProblem problem, Plan plan, List<Violation> violations)
    {
        var lines = plan.Orders.SelectMany(order => order.Lines).ToList();
        if (lines.Select(line => line.Cost).Any(cost => new[] { cost.Material, cost.Machine, cost.Labor, cost.Blade, cost.Handling }.Any(kind => kind.Amount % 0.01m != 0)))
            violations.Add(new(PlanRule.CostDoesNotAddUp, "A cost is not in whole cents."));
        if (!problem.StockIsCosted)
            return;
        var jobs = plan.Jobs.Select(job => job.Scheduled.JobId).ToHashSet(StringComparer.Ordinal);
        var consumed = plan.Layouts.Where(layout => jobs.Contains(layout.JobId))
            .Sum(layout => (layout.Layout.Stock.CostMicros - layout.Layout.Remainder.ValueMicros) / 1_000_000m * layout.Layout.Repeat);
        if (Math.Abs(lines.Sum(line => line.Cost.Material.Amount) - consumed) > 0.005m)
            violations.Add(new(PlanRule.CostDoesNotAddUp, $"The lines' material is not the {consumed} that the layouts consume."));
    }

    private static void CheckStatus(Plan plan, List<Violation> violations)
    {
        var lines = plan.Orders.SelectMany(order => order.Lines).ToList();
        var planned = lines.Sum(line => (long)line.Planned);
        var isShort = lines.Any(line => line.Line.Quantity - line.Planned > line.Line.Under);
        var status = !isShort ? PlanStatus.Complete : planned == 0 ? PlanStatus.None : PlanStatus.Partial;
        if (plan.Status != status)
            violations.Add(new(PlanRule.StatusWrong, $"{planned} of {lines.Sum(line => (long)line.Line.Quantity)} pieces are planned."));
    }
}
