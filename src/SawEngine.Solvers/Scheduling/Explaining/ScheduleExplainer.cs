using SawEngine.Core.Scheduling;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Solvers.Scheduling.Explaining;

/// <summary>Explains schedules by reading their times, and by timing plans in which one thing is changed. Bounded by work, whatever the size of the plan.</summary>
public sealed class ScheduleExplainer : IScheduleExplainer
{
    // A microsecond or more each.
    private const long PlacementsForOtherSaws = 250_000;
    private const long PlacementsForCures = 400_000;

    /// <inheritdoc/>
    public ScheduleExplanation Explain(ScheduleProblem problem, Schedule schedule, CancellationToken cancellation)
    {
        if (schedule.Jobs.Count == 0)
            return ScheduleExplanation.None;
        var timeline = new SawTimeline(problem, schedule);
        var shop = new Shop(problem, PartsOf(schedule));
        var plan = SawPlan.Of(shop, schedule);
        var otherSaws = new OtherSaws(plan, new(PlacementsForOtherSaws, cancellation));
        var jobs = schedule.Jobs.Select(job => otherSaws.Explain(job, timeline.WaitOf(job))).ToList();
        return new(jobs, LateDeliveries(problem, schedule, timeline, shop, plan, cancellation));
    }

    private static Dictionary<string, int> PartsOf(Schedule schedule) =>
        schedule.Jobs.GroupBy(job => job.JobId, StringComparer.Ordinal).Where(group => group.Count() > 1).ToDictionary(group => group.Key, group => group.Count(), StringComparer.Ordinal);

    private static List<LateDelivery> LateDeliveries(ScheduleProblem problem, Schedule schedule, SawTimeline timeline, Shop shop, SawPlan plan, CancellationToken cancellation)
    {
        var jobs = schedule.Jobs.ToLookup(job => job.JobId, StringComparer.Ordinal);
        var late = new List<(Delivery Delivery, ScheduledJob Last)>();
        foreach (var delivery in problem.Deliveries)
            if (delivery.JobIds.SelectMany(id => jobs[id]).MaxBy(job => job.Finish) is { } last && delivery.Due is { } due && last.Finish > due)
                late.Add((delivery, last));
        var meter = new WorkMeter(PlacementsForCures, cancellation);
        var alone = late.Count > 0 ? CostBound.FinishesAlone(shop) : [];
        var placements = new Placements(plan, meter);
        return
        [
            .. late.OrderByDescending(one => CostOf(one.Delivery, one.Last)).ThenBy(one => one.Delivery.DeliveryId, StringComparer.Ordinal)
                .Select(one => Explained(one.Delivery, one.Last)).ToList().OrderBy(one => one.DeliveryId, StringComparer.Ordinal),
        ];

        LateDelivery Explained(Delivery delivery, ScheduledJob last) => new()
        {
            DeliveryId = delivery.DeliveryId,
            JobId = last.JobId,
            SecondsLate = last.Finish - delivery.Due!.Value,
            CostMicros = ScheduleCost.Held(CostOf(delivery, last)),
            SecondsLateAlone = Math.Max(0, alone.GetValueOrDefault(last.JobId) - delivery.Due.Value),
            Causes = timeline.CausesOf(last),
            Cures = meter.Stopped ? [] : new CureSearch(problem, plan, placements, delivery, last, meter).Find(),
        };
    }

    private static Int128 CostOf(Delivery delivery, ScheduledJob last) => ScheduleCost.Tardiness(delivery.CostMicrosPerHourLate, last.Finish - delivery.Due!.Value);
}
