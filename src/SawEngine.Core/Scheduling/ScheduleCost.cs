namespace SawEngine.Core.Scheduling;

/// <summary>
/// What a schedule costs, in millionths of the currency: the tardiness of the deliveries, the set-up and work seconds of the jobs, and
/// the time until the last job is done (makespan) where the problem says so.
/// A delivery is finished with the last of its scheduled jobs; jobs left out cost nothing and are reported instead.
/// </summary>
public static class ScheduleCost
{
    /// <summary>Seconds of an hour.</summary>
    public const int SecondsPerHour = 3600;

    /// <summary>Cost of the jobs as scheduled. A sum beyond the range of <see cref="long"/> is held at its end.</summary>
    public static long Micros(ScheduleProblem problem, IReadOnlyList<ScheduledJob> jobs)
    {
        var rates = problem.Jobs.ToDictionary(job => job.JobId, StringComparer.Ordinal);
        var finishes = jobs.ToDictionary(job => job.JobId, job => job.Finish, StringComparer.Ordinal);
        Int128 sum = 0;
        foreach (var job in jobs)
            sum += SawTime(Rate(rates[job.JobId], job.SawId), BusySeconds(job));
        if (jobs.Count > 0)
            sum += SawTime(problem.MakespanCostMicrosPerSecond, jobs.Max(job => job.Finish));
        foreach (var delivery in problem.Deliveries)
        {
            var done = delivery.JobIds.Where(finishes.ContainsKey).Select(id => finishes[id]).DefaultIfEmpty(long.MinValue).Max();
            if (delivery.Due is { } due && done > due)
                sum += Tardiness(delivery.CostMicrosPerHourLate, done - due);
        }
        return Held(sum);
    }

    /// <summary>Cost of one late delivery, rounded down once.</summary>
    /// <param name="costMicrosPerHourLate">Millionths of the currency per hour, not negative.</param>
    /// <param name="secondsLate">Seconds after the promise, not negative.</param>
    public static Int128 Tardiness(long costMicrosPerHourLate, long secondsLate)
    {
        var high = Math.BigMul(costMicrosPerHourLate, secondsLate, out var low);
        // Dividing 64 bits is an order of magnitude faster than 128, and nearly always enough.
        return high == 0 && low >= 0 ? low / SecondsPerHour : (Int128)costMicrosPerHourLate * secondsLate / SecondsPerHour;
    }

    /// <summary>Cost of a saw's time, or of the makespan.</summary>
    /// <param name="costMicrosPerSecond">Millionths of the currency per second.</param>
    /// <param name="busySeconds">Seconds of set-up and work, or until the last job is done.</param>
    public static Int128 SawTime(long costMicrosPerSecond, long busySeconds) => (Int128)costMicrosPerSecond * busySeconds;

    /// <summary>Seconds of set-up and of work (each span rounded up) of a job.</summary>
    public static long BusySeconds(ScheduledJob job) =>
        job.SetUps.Sum(part => part.Finish - part.Start) + job.Work.Sum(span => span.Finish - span.Start);

    /// <summary>A sum as <see cref="long"/>, held at the end of its range.</summary>
    public static long Held(Int128 micros) => (long)Int128.Clamp(micros, long.MinValue, long.MaxValue);

    private static long Rate(ScheduleJob job, string sawId) =>
        job.Options.First(option => string.Equals(option.SawId, sawId, StringComparison.Ordinal)).CostMicrosPerSecond;
}
