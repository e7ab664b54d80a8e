namespace SawEngine.Core.Scheduling.Explanations;

/// <summary>Reads from the times of a schedule what each job waits for, and what a late job's time is spent on.</summary>
public sealed class SawTimeline
{
    private readonly Dictionary<string, ScheduleJob> jobs;
    private readonly Dictionary<string, long> finishes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ScheduleSaw> saws;
    private readonly ILookup<string, ScheduledJob> onSaw;

    /// <summary>The timeline of a clean schedule.</summary>
    public SawTimeline(ScheduleProblem problem, Schedule schedule)
    {
        jobs = problem.Jobs.ToDictionary(job => job.JobId, StringComparer.Ordinal);
        saws = problem.Saws.ToDictionary(saw => saw.SawId, StringComparer.Ordinal);
        onSaw = schedule.Jobs.OrderBy(job => job.Sequence).ToLookup(job => job.SawId, StringComparer.Ordinal);
        foreach (var job in schedule.Jobs)
            finishes[job.JobId] = Math.Max(job.Finish, finishes.GetValueOrDefault(job.JobId, long.MinValue));
    }

    /// <summary>Why a job does not start earlier.</summary>
    public JobWait WaitOf(ScheduledJob scheduled)
    {
        var job = jobs[scheduled.JobId];
        var setUpEnd = scheduled.SetUps.Where(part => part.Finish <= scheduled.Start).Select(part => part.Finish).DefaultIfEmpty(long.MinValue).Max();
        if (scheduled.Start > setUpEnd && scheduled.Start > 0 && scheduled.Start == ReleaseOf(job))
            return new(WaitKind.Release);
        if (scheduled.Start > setUpEnd && LastPredecessor(job) is { } before && finishes[before] == scheduled.Start)
            return new(WaitKind.Predecessor, before);
        if (setUpEnd > long.MinValue && setUpEnd < scheduled.Start)
            return new(IsAttendedBefore(scheduled.SawId, scheduled.Start) ? WaitKind.OperatorOrCrane : WaitKind.NotAttended);
        var start = scheduled.SetUps.Select(part => part.Start).Append(scheduled.Start).Min();
        if (start == 0)
            return new(WaitKind.PlanStart);
        var earlier = onSaw[scheduled.SawId].LastOrDefault(other => other.Sequence < scheduled.Sequence);
        if (earlier is not null && earlier.Finish == start)
            return new(WaitKind.SawBusy, earlier.JobId);
        return new(IsAttendedBefore(scheduled.SawId, start) ? WaitKind.OperatorOrCrane : WaitKind.NotAttended);
    }

    /// <summary>What the time from the start of the plan to a job's end is spent on, the longest first.</summary>
    public IReadOnlyList<LatenessCause> CausesOf(ScheduledJob scheduled)
    {
        var job = jobs[scheduled.JobId];
        var release = ReleaseOf(job);
        var predecessors = LastPredecessor(job) is { } before ? finishes[before] : 0;
        var others = onSaw[scheduled.SawId].Where(other => other.Sequence < scheduled.Sequence).ToList();
        var seconds = new SortedDictionary<LatenessCauseKind, long>();
        var cuts = Boundaries(scheduled, others, release, predecessors);
        for (var i = 0; i + 1 < cuts.Count; i++)
        {
            var kind = KindAt(cuts[i]);
            seconds[kind] = seconds.GetValueOrDefault(kind) + cuts[i + 1] - cuts[i];
        }
        return [.. seconds.OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key).Select(pair => new LatenessCause(pair.Key, pair.Value, JobIds(pair.Key)))];

        LatenessCauseKind KindAt(long second) =>
            scheduled.Work.Any(span => span.Start <= second && second < span.Finish) ? LatenessCauseKind.Work
            : scheduled.SetUps.Any(part => part.Start <= second && second < part.Finish) ? LatenessCauseKind.SetUps
            : second < release && second < scheduled.Start ? LatenessCauseKind.Release
            : second < predecessors && second < scheduled.Start ? LatenessCauseKind.Predecessors
            : others.Any(other => IsBusy(other, second)) ? LatenessCauseKind.EarlierJobs
            : IsAttended(scheduled.SawId, second) ? LatenessCauseKind.OperatorOrCrane
            : IsIn(saws[scheduled.SawId].Lost, second) ? LatenessCauseKind.SawDown
            : LatenessCauseKind.NotAttended;

        IReadOnlyList<string> JobIds(LatenessCauseKind kind) => kind switch
        {
            LatenessCauseKind.EarlierJobs => [.. others.Where(other => other.Finish > Math.Max(release, predecessors)).Select(other => other.JobId).Distinct()],
            LatenessCauseKind.Predecessors => job.After,
            _ => [],
        };
    }

    private static long ReleaseOf(ScheduleJob job) => job.Frozen is { } place ? place.Start : job.Release;

    private string? LastPredecessor(ScheduleJob job) => job.Frozen is not null ? null : job.After.Where(finishes.ContainsKey).MaxBy(id => finishes[id]);

    private List<long> Boundaries(ScheduledJob scheduled, List<ScheduledJob> others, long release, long predecessors)
    {
        var events = others.Append(scheduled)
            .SelectMany(job => job.SetUps.SelectMany(part => new[] { part.Start, part.Finish }).Concat(job.Work.SelectMany(span => new[] { span.Start, span.Finish })));
        var windows = saws[scheduled.SawId].Windows.Concat(saws[scheduled.SawId].Lost).SelectMany(window => new[] { window.Start, window.End });
        return [.. events.Concat(windows).Concat([0, release, predecessors]).Where(second => second >= 0 && second <= scheduled.Finish).Distinct().Order()];
    }

    private static bool IsBusy(ScheduledJob job, long second) =>
        job.SetUps.Any(part => part.Start <= second && second < part.Finish) || job.Work.Any(span => span.Start <= second && second < span.Finish);

    private bool IsAttendedBefore(string sawId, long second) => IsAttended(sawId, second - 1);

    private bool IsAttended(string sawId, long second) => IsIn(saws[sawId].Windows, second);

    private static bool IsIn(IReadOnlyList<TimeWindow> windows, long second) => windows.Any(window => window.Start <= second && second < window.End);
}
