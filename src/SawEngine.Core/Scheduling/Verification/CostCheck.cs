using System.Numerics;

namespace SawEngine.Core.Scheduling.Verification;

/// <summary>Whether the stated cost is that of the schedule: every term is added up again from its definition, however large it is.</summary>
internal sealed class CostCheck(ScheduleProblem problem, ProblemIndex index, Findings found)
{
    private const int SecondsPerHour = 3600;

    public void Run(Schedule schedule, IReadOnlyList<ListedJob> all)
    {
        var cost = BigInteger.Zero;
        foreach (var bySaw in all.GroupBy(listed => listed.Scheduled.SawId, StringComparer.Ordinal))
        {
            OvertimeWindow[] overtime = [.. index.Saw(bySaw.Key)!.Overtime.OrderBy(overtime => overtime.Window.Start)];
            foreach (var listed in bySaw)
                cost += SawTime(listed, overtime);
        }
        if (all.Count > 0)
            cost += (BigInteger)problem.MakespanCostMicrosPerSecond * all.Max(listed => listed.Finish);
        cost += Tardiness(all) + Stability(all);
        var held = (long)BigInteger.Min(long.MaxValue, BigInteger.Max(long.MinValue, cost));
        if (held != schedule.CostMicros)
            found.Note(ScheduleRule.CostWrong, $"The schedule costs {held}, not {schedule.CostMicros}.");
    }

    private static BigInteger SawTime(ListedJob listed, OvertimeWindow[] overtime)
    {
        var cost = BigInteger.Zero;
        foreach (var (start, finish) in SetUps(listed.Scheduled))
            cost += ((BigInteger)finish - start) * listed.Option.SetUpCostMicrosPerSecond + Overtime(overtime, start, finish);
        foreach (var span in listed.Scheduled.Work)
            cost += ((BigInteger)span.Finish - span.Start) * listed.Option.CostMicrosPerSecond + Overtime(overtime, span.Start, span.Finish);
        return cost;
    }

    // Parts that are done at the same time count once.
    private static IEnumerable<(long Start, long Finish)> SetUps(ScheduledJob job)
    {
        var until = long.MinValue;
        foreach (var part in job.SetUps.OrderBy(part => part.Start))
        {
            var start = Math.Max(until, part.Start);
            if (start < part.Finish)
                yield return (start, part.Finish);
            until = Math.Max(until, part.Finish);
        }
    }

    private static BigInteger Overtime(OvertimeWindow[] overtime, long start, long finish)
    {
        var cost = BigInteger.Zero;
        for (var i = FirstEndingAfter(overtime, start); i < overtime.Length && overtime[i].Window.Start < finish; i++)
        {
            var (window, price) = overtime[i];
            cost += BigInteger.Max(0, (BigInteger)Math.Min(finish, window.End) - Math.Max(start, window.Start)) * price;
        }
        return cost;
    }

    private static int FirstEndingAfter(OvertimeWindow[] overtime, long second)
    {
        var (low, high) = (0, overtime.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (overtime[middle].Window.End <= second)
                low = middle + 1;
            else
                high = middle;
        }
        return low;
    }

    private BigInteger Tardiness(IReadOnlyList<ListedJob> all)
    {
        var finishes = all.GroupBy(listed => listed.Job.JobId, StringComparer.Ordinal)
            .ToDictionary(parts => parts.Key, parts => parts.Max(part => part.Finish), StringComparer.Ordinal);
        var cost = BigInteger.Zero;
        foreach (var delivery in problem.Deliveries)
        {
            var last = delivery.JobIds.Where(finishes.ContainsKey).Select(id => finishes[id]).DefaultIfEmpty(long.MinValue).Max();
            if (delivery.Due is { } due && last > due)
                cost += ((BigInteger)last - due) * delivery.CostMicrosPerHourLate / SecondsPerHour;
        }
        return cost;
    }

    // By the first part of a job that was split.
    private BigInteger Stability(IReadOnlyList<ListedJob> all)
    {
        if (problem.Previous is not { } previous)
            return 0;
        var first = all.GroupBy(listed => listed.Job.JobId, StringComparer.Ordinal)
            .ToDictionary(parts => parts.Key, parts => parts.MinBy(part => part.Scheduled.FirstStep)!, StringComparer.Ordinal);
        var cost = BigInteger.Zero;
        foreach (var place in previous.Places)
        {
            if (!first.TryGetValue(place.JobId, out var listed))
                continue;
            cost += BigInteger.Abs((BigInteger)listed.Start - place.Start) * previous.CostMicrosPerHourMoved / SecondsPerHour;
            cost += string.Equals(place.SawId, listed.Scheduled.SawId, StringComparison.Ordinal) ? 0 : previous.CostMicrosPerSawChange;
        }
        return cost;
    }
}
