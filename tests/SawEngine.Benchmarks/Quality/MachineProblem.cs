using System.Globalization;
using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Benchmarks.Quality;

/// <summary>
/// Jobs on unlike machines in the numbers of a source. A job starts no earlier than it is released and than its machine is set up for
/// it; a set-up may be done before the release.
/// </summary>
/// <param name="Seconds">By job and machine; null where it cannot run.</param>
/// <param name="SetUp">By machine, job before and job; null where there is none.</param>
/// <param name="FirstSetUp">By machine and job; null where there is none before the first job.</param>
/// <param name="Release">By job.</param>
/// <param name="Due">By job.</param>
/// <param name="Weight">By job; all 0 where the makespan is the objective.</param>
/// <param name="IsMakespan">Whether the finish of the last job counts, not weighted tardiness.</param>
/// <param name="Shifts">When machines run; always where none is given.</param>
internal sealed record MachineProblem(
    long?[][] Seconds, long[][][]? SetUp, long[][]? FirstSetUp, long[] Release, long[] Due, long[] Weight, bool IsMakespan, TimeWindow[] Shifts)
{
    /// <summary>Whether a job that a shift's end stops goes on in the next shift, after any whole second; otherwise it must fit.</summary>
    public bool MayPause { get; init; }

    private const long SecondsPerHour = 3600;
    private const long Horizon = 10_000_000;

    public int Jobs => Seconds.Length;

    public int Machines => Seconds[0].Length;

    /// <summary>Each job is a section of its own, so that times of section changes by pair are the set-ups.</summary>
    public ScheduleProblem ToScheduleProblem() => new()
    {
        Saws = [.. Enumerable.Range(0, Machines).Select(Saw)],
        Jobs = [.. Enumerable.Range(0, Jobs).Select(Job)],
        Deliveries = IsMakespan ? [] : [.. Enumerable.Range(0, Jobs).Select(job => new Delivery(JobId(job), Due[job], Weight[job] * SecondsPerHour, [JobId(job)]))],
        MakespanCostMicrosPerSecond = IsMakespan ? 1 : 0,
    };

    /// <summary>The objective of the source, counted from sequences by its own rule; null where a job does not run once on a machine that can take it.</summary>
    public long? Value(IEnumerable<ScheduledJob> scheduled)
    {
        var finish = new long?[Jobs];
        foreach (var machine in scheduled.GroupBy(job => job.SawId))
        {
            var (saw, time, before) = (int.Parse(machine.Key[1..], CultureInfo.InvariantCulture), 0L, -1);
            foreach (var item in machine.OrderBy(job => job.Sequence))
            {
                var job = int.Parse(item.JobId[1..], CultureInfo.InvariantCulture);
                if (finish[job] is not null || Seconds[job][saw] is not { } seconds)
                    return null;
                var setUp = before < 0 ? FirstSetUp?[saw][job] ?? 0 : SetUp?[saw][before][job] ?? 0;
                time = Finish(Math.Max(time + setUp, Release[job]), seconds);
                if (item.Finish != time)
                    return null;
                (finish[job], before) = (time, job);
            }
        }
        if (finish.Contains(null))
            return null;
        return IsMakespan ? finish.Max() : Enumerable.Range(0, Jobs).Sum(job => Weight[job] * Math.Max(0, finish[job]!.Value - Due[job]));
    }

    private long Finish(long start, long seconds)
    {
        if (Shifts.Length == 0)
            return start + seconds;
        foreach (var shift in Shifts)
        {
            start = Math.Max(start, shift.Start);
            if (start + seconds <= shift.End)
                return start + seconds;
            if (MayPause && start < shift.End)
                (seconds, start) = (seconds - (shift.End - start), shift.End);
        }
        return -1;
    }

    private ScheduleSaw Saw(int machine) => new()
    {
        SawId = SawId(machine),
        Windows = Shifts.Length > 0 ? Shifts : [new(0, Horizon)],
        InitialState = new(null, null, null),
        SetUpTimes = new(0, 0, 0) { SectionChanges = SetUp is null && FirstSetUp is null ? null : new(Changes(machine)) },
    };

    private List<SetUpChange> Changes(int machine)
    {
        var changes = new List<SetUpChange>();
        for (var job = 0; job < Jobs; job++)
        {
            if (FirstSetUp is not null)
                changes.Add(new(null, JobId(job), FirstSetUp[machine][job]));
            for (var before = 0; before < Jobs && SetUp is not null; before++)
                if (before != job)
                    changes.Add(new(JobId(before), JobId(job), SetUp[machine][before][job]));
        }
        return changes;
    }

    private ScheduleJob Job(int job) => new()
    {
        JobId = JobId(job),
        Release = Release[job],
        Options =
        [
            .. Enumerable.Range(0, Machines).Where(machine => Seconds[job][machine] is not null).Select(machine => new JobOption
            {
                SawId = SawId(machine),
                SetUp = new(JobId(job), null, null),
                Steps = [MayPause ? new(1000, (int)Seconds[job][machine]!.Value) : new(Seconds[job][machine]!.Value * 1000, 1)],
                MayPause = MayPause,
            }),
        ],
    };

    private static string JobId(int job) => FormattableString.Invariant($"J{job:0000}");

    private static string SawId(int machine) => FormattableString.Invariant($"S{machine:00}");
}
