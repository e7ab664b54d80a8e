namespace SawEngine.Core.Scheduling;

/// <summary>
/// What a schedule costs, in millionths of the currency: the tardiness of the deliveries, the set-up and work seconds of the jobs, the extra price of overtime,
/// the time until the last job is done (makespan) and the changes against an earlier schedule where the problem says so.
/// A delivery is finished with the last of its scheduled jobs; jobs left out cost nothing and are reported instead.
/// </summary>
public static class ScheduleCost
{
    /// <summary>Seconds of an hour.</summary>
    public const int SecondsPerHour = 3600;

    /// <summary>Cost of the jobs as scheduled. A sum beyond the range of <see cref="long"/> is held at its end.</summary>
    public static long Micros(ScheduleProblem problem, IReadOnlyList<ScheduledJob> jobs) => Held(Terms(problem, jobs).Total);

    /// <summary>The same by cause.</summary>
    public static ScheduleTerms Terms(ScheduleProblem problem, IReadOnlyList<ScheduledJob> jobs)
    {
        var known = problem.Jobs.ToDictionary(job => job.JobId, StringComparer.Ordinal);
        var saws = problem.Saws.ToDictionary(saw => saw.SawId, StringComparer.Ordinal);
        Int128 work = 0, setUps = 0, overtime = 0;
        foreach (var job in jobs)
        {
            var option = known[job.JobId].Options.First(option => string.Equals(option.SawId, job.SawId, StringComparison.Ordinal));
            work += SawTime(option.CostMicrosPerSecond, WorkSeconds(job));
            setUps += SawTime(option.SetUpCostMicrosPerSecond, SetUpSeconds(job));
            overtime += Overtime(saws[job.SawId], job);
        }
        var makespan = jobs.Count > 0 ? SawTime(problem.MakespanCostMicrosPerSecond, jobs.Max(job => job.Finish)) : 0;
        return new(Tardiness(problem, jobs), work, setUps, overtime, makespan, Stability(problem, jobs));
    }

    /// <summary>Cost of one late delivery, rounded down once.</summary>
    /// <param name="costMicrosPerHourLate">Millionths of the currency per hour, not negative.</param>
    /// <param name="secondsLate">Seconds after the promise, not negative.</param>
    public static Int128 Tardiness(long costMicrosPerHourLate, long secondsLate) => Hours(costMicrosPerHourLate, secondsLate);

    /// <summary>Cost of a saw's time, or of the makespan.</summary>
    /// <param name="costMicrosPerSecond">Millionths of the currency per second.</param>
    /// <param name="busySeconds">Seconds of set-up and work, or until the last job is done.</param>
    public static Int128 SawTime(long costMicrosPerSecond, long busySeconds) => (Int128)costMicrosPerSecond * busySeconds;

    /// <summary>Extra price of a job's seconds of set-up and work that lie in a saw's overtime.</summary>
    /// <param name="saw">Its saw.</param>
    /// <param name="job">The job.</param>
    public static Int128 Overtime(ScheduleSaw saw, ScheduledJob job)
    {
        Int128 sum = 0;
        foreach (var (window, cost) in saw.Overtime)
        {
            var within = job with
            {
                SetUps = [.. job.SetUps.Select(part => part with { Start = Within(part.Start, window), Finish = Within(part.Finish, window) })],
                Work = [.. job.Work.Select(span => span with { Start = Within(span.Start, window), Finish = Within(span.Finish, window) })],
            };
            sum += SawTime(cost, SetUpSeconds(within) + WorkSeconds(within));
        }
        return sum;
    }

    /// <summary>Cost of a job's place against its earlier one, the hours rounded down once.</summary>
    /// <param name="previous">Costs of changes.</param>
    /// <param name="place">Its earlier place.</param>
    /// <param name="sawId">Its saw now.</param>
    /// <param name="start">Start of its work now.</param>
    public static Int128 Moved(PreviousSchedule previous, PreviousPlace place, string sawId, long start) =>
        Hours(previous.CostMicrosPerHourMoved, Math.Abs(start - place.Start))
        + (string.Equals(place.SawId, sawId, StringComparison.Ordinal) ? 0 : previous.CostMicrosPerSawChange);

    /// <summary>Seconds in which a job is set up; parts at the same time count once.</summary>
    public static long SetUpSeconds(ScheduledJob job)
    {
        var (sum, until) = (0L, long.MinValue);
        foreach (var part in job.SetUps.OrderBy(part => part.Start))
        {
            sum += Math.Max(0, part.Finish - Math.Max(part.Start, until));
            until = Math.Max(until, part.Finish);
        }
        return sum;
    }

    /// <summary>Seconds of work of a job, each span rounded up.</summary>
    public static long WorkSeconds(ScheduledJob job) => job.Work.Sum(span => span.Finish - span.Start);

    /// <summary>A sum as <see cref="long"/>, held at the end of its range.</summary>
    public static long Held(Int128 micros) => (long)Int128.Clamp(micros, long.MinValue, long.MaxValue);

    private static Int128 Hours(long costMicrosPerHour, long seconds)
    {
        var high = Math.BigMul(costMicrosPerHour, seconds, out var low);
        // Dividing 64 bits is an order of magnitude faster than 128, and nearly always enough.
        return high == 0 && low >= 0 ? low / SecondsPerHour : (Int128)costMicrosPerHour * seconds / SecondsPerHour;
    }

    private static Int128 Tardiness(ScheduleProblem problem, IReadOnlyList<ScheduledJob> jobs)
    {
        var finishes = new Dictionary<string, long>(StringComparer.Ordinal);
        foreach (var job in jobs)
            finishes[job.JobId] = Math.Max(job.Finish, finishes.GetValueOrDefault(job.JobId, long.MinValue));
        Int128 sum = 0;
        foreach (var delivery in problem.Deliveries)
        {
            var done = delivery.JobIds.Where(finishes.ContainsKey).Select(id => finishes[id]).DefaultIfEmpty(long.MinValue).Max();
            if (delivery.Due is { } due && done > due)
                sum += Tardiness(delivery.CostMicrosPerHourLate, done - due);
        }
        return sum;
    }

    private static long Within(long second, TimeWindow window) => Math.Clamp(second, window.Start, window.End);

    /// <summary>By the first part of a job that was split.</summary>
    private static Int128 Stability(ScheduleProblem problem, IReadOnlyList<ScheduledJob> jobs)
    {
        if (problem.Previous is not { } previous)
            return 0;
        var first = jobs.GroupBy(job => job.JobId, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.MinBy(job => job.FirstStep)!, StringComparer.Ordinal);
        return previous.Places.Where(place => first.ContainsKey(place.JobId))
            .Aggregate((Int128)0, (sum, place) => sum + Moved(previous, place, first[place.JobId].SawId, first[place.JobId].Start));
    }
}
