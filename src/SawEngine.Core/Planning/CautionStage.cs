using SawEngine.Core.Cautions;
using SawEngine.Core.Orders;
using SawEngine.Core.Scheduling;

namespace SawEngine.Core.Planning;

/// <summary>Attaches cautions to the jobs that cause them. Each caution stands once in the plan.</summary>
internal sealed class CautionStage(PlanProblem problem)
{
    private readonly Dictionary<PieceRef, OrderLine> lines = problem.Orders.SelectMany(order => order.Lines).ToDictionary(line => line.Ref);

    public Result Run(IReadOnlyList<JobDraft> jobs, IReadOnlyDictionary<string, ScheduledJob> scheduled)
    {
        var byJob = jobs.Where(job => scheduled.ContainsKey(job.JobId))
            .ToDictionary(job => job.JobId, job => CautionsOf(job, scheduled[job.JobId].SawId), StringComparer.Ordinal);
        var all = NumberedCautions.Of(byJob.Values.SelectMany(cautions => cautions));
        return new(all.All, byJob.ToDictionary(job => job.Key, job => all.IdsOf(job.Value), StringComparer.Ordinal));
    }

    private HashSet<Caution> CautionsOf(JobDraft job, string sawId)
    {
        var saw = problem.Saws.First(planSaw => planSaw.Saw.SawId == sawId).Saw;
        var (section, grade) = (job.Nest.Group.Section, job.Grade);
        var works = job.OnSaw[sawId];
        var bars = works.Select(bar => bar.Layout).ToList();
        var bundles = works.SelectMany(bar => bar.Bundles.Select(bundle => (bar.Layout.Stock, bundle.Bundle))).Where(bundle => !bundle.Bundle.IsSingle)
            .GroupBy(bundle => bundle.Stock.StockId, StringComparer.Ordinal).Select(ofStock => ofStock.MaxBy(bundle => bundle.Bundle.Bars)).ToList();
        var pieces = bars.SelectMany(bar => bar.Cuts).DistinctBy(cut => cut.Piece).ToList();
        var longest = pieces.Max(cut => cut.End - cut.Start);
        var shortest = pieces.Min(cut => PieceGeometry.Of(lines[cut.Piece]).ShortSide);
        var lifts = bars.Select(bar => bar.Stock).DistinctBy(stock => stock.StockId)
            .Select(stock => CautionRules.ForLift($"Bar {stock.StockId}", grade.Density.Value.MassOf(section.Area, stock.Length)))
            .Concat(bundles.Select(bundle => CautionRules.ForLift($"Bundle of {bundle.Bundle.Bars} bars {bundle.Stock.StockId}", new(grade.Density.Value.MassOf(section.Area, bundle.Stock.Length).Kilograms * bundle.Bundle.Bars))))
            .Append(CautionRules.ForLift($"The longest piece of {section.Designation}", grade.Density.Value.MassOf(section.Area, longest)))
            .Append(CautionRules.ForShortPiece(shortest, section))
            .Concat(bars.Select(bar => CautionRules.ForCoating(bar.Stock.Coating)));
        return [.. CautionRules.ForSaw(saw), .. CautionRules.ForGrade(grade, saw), .. bundles.SelectMany(bundle => CautionRules.ForBundle(bundle.Bundle)), .. lifts.OfType<Caution>()];
    }

    /// <summary>The cautions of the plan, and the ids by job.</summary>
    public sealed record Result(IReadOnlyList<NumberedCaution> All, IReadOnlyDictionary<string, IReadOnlyList<string>> ByJob)
    {
        public IReadOnlyList<string> OfJob(string jobId) => ByJob.GetValueOrDefault(jobId, []);
    }
}
