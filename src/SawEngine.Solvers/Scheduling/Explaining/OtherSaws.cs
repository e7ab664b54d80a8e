using SawEngine.Core.Scheduling;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Solvers.Scheduling.Explaining;

/// <summary>What each job would cost on the next best saw: where it goes there is judged on the axes, what that costs by the plan's own times.</summary>
internal sealed class OtherSaws
{
    private readonly SawPlan plan;
    private readonly Shop shop;
    private readonly WorkMeter meter;
    private readonly Placements placements;
    private readonly Int128 cost;

    public OtherSaws(SawPlan plan, WorkMeter meter)
    {
        (this.plan, shop, this.meter) = (plan, plan.Shop, meter);
        placements = new(plan, meter);
        cost = plan.Score().CostMicros;
    }

    public JobExplanation Explain(ScheduledJob scheduled, JobWait wait)
    {
        var job = Array.FindIndex(shop.Parts, part => part.Job.JobId == scheduled.JobId && part.FirstStep == scheduled.FirstStep);
        var explanation = new JobExplanation { JobId = scheduled.JobId, FirstStep = scheduled.FirstStep, WaitsFor = wait, SawReason = SawReason.OnlySaw };
        if (shop.IsFrozen(job))
            return explanation with { SawReason = SawReason.Frozen };
        if (shop.Work[job].Count(work => work is not null) <= 1)
            return explanation;
        explanation = explanation with { SawReason = SawReason.LeastCost };
        if (meter.Stopped)
            return explanation;
        var home = plan.Sequences.ToList().FindIndex(sequence => sequence.Contains(job));
        var best = placements.Best(job, saw => saw != home, 1).FirstOrDefault();
        if (best.Plan is not { } other || other.Score() is var score && score.Unscheduled > plan.Score().Unscheduled)
            return explanation;
        var more = ScheduleCost.Held(score.CostMicros - cost);
        return explanation with
        {
            SawReason = more < 0 ? SawReason.NotImproved : SawReason.LeastCost,
            OtherSawId = shop.Saws[best.Saw].SawId,
            OtherSawCostMicros = more,
        };
    }
}
