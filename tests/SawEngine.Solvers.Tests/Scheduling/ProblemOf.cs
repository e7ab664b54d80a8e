using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Solvers.Tests.Scheduling;

/// <summary>Small problems in the words of the textbooks: processing times, release dates, due dates and weights, in seconds.</summary>
internal static class ProblemOf
{
    public static readonly SetUpState AnySetUp = new(null, null, null);

    /// <summary>Cost of an hour late that makes a second late cost one.</summary>
    public const long PerSecond = 3600;

    public static ScheduleSaw Saw(string id, params TimeWindow[] windows) => new()
    {
        SawId = id,
        Windows = windows.Length > 0 ? windows : [new(0, 1_000_000)],
        InitialState = AnySetUp,
        SetUpTimes = new(0, 0, 0),
    };

    /// <summary>Processing times by job and saw; null where the saw cannot take the job.</summary>
    public static ScheduleJob Job(int number, IReadOnlyList<long?> p, long release = 0, SetUpState? setUp = null) => new()
    {
        JobId = Id(number),
        Release = release,
        Options =
        [
            .. p.Select((seconds, saw) => (seconds, saw)).Where(item => item.seconds is not null).Select(item => new JobOption
            {
                SawId = SawId(item.saw),
                SetUp = setUp ?? AnySetUp,
                Steps = [new(item.seconds!.Value * 1000, 1)],
            }),
        ],
    };

    public static string Id(int number) => $"J{number:00}";

    public static string SawId(int saw) => $"S{saw + 1}";

    /// <summary>One delivery for each job.</summary>
    public static ScheduleProblem WithTardiness(IReadOnlyList<ScheduleSaw> saws, IReadOnlyList<ScheduleJob> jobs, long[] due, long[] weight) => new()
    {
        Saws = saws,
        Jobs = jobs,
        Deliveries = [.. jobs.Select((job, i) => new Delivery(job.JobId, due[i], weight[i] * PerSecond, [job.JobId]))],
    };

    /// <summary>One saw, one delivery for each job.</summary>
    public static ScheduleProblem SingleSaw(long[] p, long[]? due = null, long[]? weight = null, long[]? release = null) => WithTardiness(
        [Saw("S1")],
        [.. p.Select((seconds, i) => Job(i + 1, [seconds], release?[i] ?? 0))],
        due ?? new long[p.Length],
        weight ?? [.. p.Select(_ => 1L)]);

    /// <summary>Equal saws and all jobs in one delivery, so that the earliest delivery is the shortest schedule.</summary>
    public static ScheduleProblem Makespan(int saws, params long[] p) => Makespan(
        [.. Enumerable.Range(0, saws).Select(saw => Saw(SawId(saw)))],
        [.. p.Select((seconds, i) => Job(i + 1, [.. Enumerable.Repeat((long?)seconds, saws)]))]);

    public static ScheduleProblem Makespan(IReadOnlyList<ScheduleSaw> saws, IReadOnlyList<ScheduleJob> jobs) => new()
    {
        Saws = saws,
        Jobs = jobs,
        Deliveries = [new("D", null, 0, [.. jobs.Select(job => job.JobId)])],
    };
}
