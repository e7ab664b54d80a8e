namespace SawEngine.Core.Scheduling.Explanations;

/// <summary>Reads from the times of a schedule what each job waits for, and what a late job's time is spent on.</summary>
public sealed class SawTimeline
{
    private readonly Dictionary<string, ScheduleJob> jobs;
    private readonly Dictionary<string, long> finishes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ScheduleSaw> saws;
    private readonly ILookup<string, ScheduledJob> onSaw;
    private readonly HashSet<string> withHands;

    /// <summary>The timeline of a clean schedule.</summary>
    public SawTimeline(ScheduleProblem problem, Schedule schedule)
    {
        jobs = problem.Jobs.ToDictionary(job => job.JobId, StringComparer.Ordinal);
        saws = problem.Saws.ToDictionary(saw => saw.SawId, StringComparer.Ordinal);
        onSaw = schedule.Jobs.OrderBy(job => job.Sequence).ToLookup(job => job.SawId, StringComparer.Ordinal);
        withHands = [.. problem.Operators.SelectMany(one => one.SawIds), .. problem.Cranes.SelectMany(crane => crane.SawIds)];
        foreach (var job in schedule.Jobs)
            finishes[job.JobId] = Math.Max(job.Finish, finishes.GetValueOrDefault(job.JobId, long.MinValue));
    }

    /// <summary>Why a job does not start earlier.</summary>
    public JobWait WaitOf(ScheduledJob scheduled)
    {
        var job = jobs[scheduled.JobId];
        var setUpEnd = scheduled.SetUps.Where(part => part.Finish <= scheduled.Start).Select(part => part.Finish).DefaultIfEmpty(long.MinValue).Max();
        if (scheduled.Start > setUpEnd && scheduled.Start > 0 && scheduled.Start == ReleaseOf(job))
            return new(job.Frozen is null ? WaitKind.Release : WaitKind.Frozen);
        if (scheduled.Start > setUpEnd && LastPredecessor(job) is { } before && finishes[before] == scheduled.Start)
            return new(WaitKind.Predecessor, before);
        if (setUpEnd > long.MinValue && setUpEnd < scheduled.Start)
            return new(WaitsForHands(scheduled.SawId, scheduled.Start) ? WaitKind.OperatorOrCrane : WaitKind.NotAttended);
        var start = scheduled.SetUps.Select(part => part.Start).Append(scheduled.Start).Min();
        if (start == 0)
            return new(WaitKind.PlanStart);
        var earlier = onSaw[scheduled.SawId].LastOrDefault(other => other.Sequence < scheduled.Sequence);
        if (earlier is not null && earlier.Finish == start)
            return new(WaitKind.SawBusy, earlier.JobId);
        return new(WaitsForHands(scheduled.SawId, start) ? WaitKind.OperatorOrCrane : WaitKind.NotAttended);
    }

    /// <summary>What the time from the start of the plan to a job's end is spent on, the longest first.</summary>
    public IReadOnlyList<LatenessCause> CausesOf(ScheduledJob scheduled)
    {
        var (job, saw) = (jobs[scheduled.JobId], saws[scheduled.SawId]);
        var release = ReleaseOf(job);
        var predecessors = LastPredecessor(job) is { } before ? finishes[before] : 0;
        var others = onSaw[scheduled.SawId].Where(other => other.Sequence < scheduled.Sequence).ToList();
        var left = new TimeLeft(scheduled.Finish);
        var seconds = new SortedDictionary<LatenessCauseKind, long>();
        Take(LatenessCauseKind.Work, Worked(scheduled));
        Take(LatenessCauseKind.SetUps, SetUp(scheduled));
        Take(LatenessCauseKind.Release, [new(0, Math.Min(release, scheduled.Start))]);
        Take(LatenessCauseKind.Predecessors, [new(0, Math.Min(predecessors, scheduled.Start))]);
        Take(LatenessCauseKind.EarlierJobs, others.SelectMany(other => Worked(other).Concat(SetUp(other))));
        // Idle though attended: for hands, else behind a job that waits itself, or because what comes next does not fit.
        if (HasHands(scheduled.SawId))
            Take(LatenessCauseKind.OperatorOrCrane, saw.Windows);
        else if (others.Count > 0)
            Take(LatenessCauseKind.EarlierJobs, saw.Windows.TakeWhile(window => window.Start < others[^1].Finish).Select(window => window with { End = Math.Min(window.End, others[^1].Finish) }));
        Take(LatenessCauseKind.SawDown, saw.Lost);
        Take(LatenessCauseKind.NotAttended, [new(0, scheduled.Finish)]);
        return [.. seconds.OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key).Select(pair => new LatenessCause(pair.Key, pair.Value, JobIds(pair.Key)))];

        void Take(LatenessCauseKind kind, IEnumerable<TimeWindow> windows)
        {
            if (left.Take(windows) is > 0 and var taken)
                seconds[kind] = seconds.GetValueOrDefault(kind) + taken;
        }

        IReadOnlyList<string> JobIds(LatenessCauseKind kind) => kind switch
        {
            LatenessCauseKind.EarlierJobs => [.. others.Where(other => other.Finish > Math.Max(release, predecessors)).Select(other => other.JobId).Distinct()],
            LatenessCauseKind.Predecessors => job.After,
            _ => [],
        };
    }

    private static IEnumerable<TimeWindow> Worked(ScheduledJob job) => job.Work.Select(span => new TimeWindow(span.Start, span.Finish));

    private static IEnumerable<TimeWindow> SetUp(ScheduledJob job) => job.SetUps.Select(part => new TimeWindow(part.Start, part.Finish));

    private static long ReleaseOf(ScheduleJob job) => job.Frozen is { } place ? place.Start : job.Release;

    private string? LastPredecessor(ScheduleJob job) => job.Frozen is not null ? null : job.After.Where(finishes.ContainsKey).MaxBy(id => finishes[id]);

    private bool WaitsForHands(string sawId, long second) =>
        HasHands(sawId) && saws[sawId].Windows.Any(window => window.Start < second && second <= window.End);

    private bool HasHands(string sawId) => withHands.Contains(sawId);
}
