using System.Diagnostics;
using SawEngine.Core.Scheduling;

namespace SawEngine.Benchmarks.Properties;

/// <summary>How long the verifier takes for large schedules with everything in them; made to be clean, so that every rule is checked to its end.</summary>
internal static class VerifierMeasure
{
    private const int Saws = 10;
    private const int BarsOfJob = 10;
    private const int JobSeconds = 5 + (BarsOfJob * 40);

    /// <summary>Measures growing schedules; answers the violations that should not be there.</summary>
    public static int Run() => new[] { 400, 1_600, 6_400 }.Sum(Measure);

    private static int Measure(int jobs)
    {
        var (problem, schedule) = Large(jobs);
        var violations = ScheduleVerifier.Verify(problem, schedule).Count;
        Processor(problem, schedule, TimeSpan.FromSeconds(2));
        var milliseconds = Processor(problem, schedule, TimeSpan.FromSeconds(2));
        Report.Say($"{jobs} jobs, {jobs * BarsOfJob * 4} steps on {Saws} saws: {milliseconds:0.0} ms of processor, {violations} violations");
        return violations;
    }

    /// <summary>Mean of many calls; of the processor's time, which others at work on the same machine leave as it is.</summary>
    private static double Processor(ScheduleProblem problem, Schedule schedule, TimeSpan least)
    {
        using var process = Process.GetCurrentProcess();
        var (before, calls) = (process.TotalProcessorTime, 0);
        for (; process.TotalProcessorTime - before < least; calls++, process.Refresh())
            ScheduleVerifier.Verify(problem, schedule);
        return (process.TotalProcessorTime - before).TotalMilliseconds / calls;
    }

    /// <summary>Each job is set up by its saw's operator and loaded by its saw's crane, bar by bar; each follows the one before it.</summary>
    private static (ScheduleProblem Problem, Schedule Schedule) Large(int jobs)
    {
        var ofSaw = jobs / Saws;
        var sawIds = Enumerable.Range(0, Saws).Select(saw => $"S{saw:00}").ToList();
        var problem = new ScheduleProblem
        {
            Saws = [.. sawIds.Select(id => Saw(id, ofSaw))],
            Jobs = [.. Enumerable.Range(0, jobs).Select(job => Job(job, sawIds[job / ofSaw], job % ofSaw == 0 ? [] : [Id(job - 1)]))],
            Deliveries = [.. Enumerable.Range(0, jobs).Select(job => new Delivery($"D{job:00000}", job, 3600, [Id(job)]))],
            Operators = [.. sawIds.Select(id => new ScheduleOperator($"O-{id}", [new(0, (long)ofSaw * JobSeconds)], [id], 1))],
            Cranes = [.. sawIds.Select(id => new ScheduleCrane($"C-{id}", [id]))],
            Previous = new([.. Enumerable.Range(0, jobs).Select(job => new PreviousPlace(Id(job), sawIds[0], 0))]) { CostMicrosPerHourMoved = 1 },
        };
        var placed = Enumerable.Range(0, jobs).Select(job => Placed(job, sawIds[job / ofSaw], job % ofSaw)).ToList();
        var schedule = new Schedule { Jobs = placed, Unscheduled = [], CostMicros = ScheduleCost.Micros(problem, placed), BoundMicros = 0, Rule = "by hand" };
        return (problem, schedule);
    }

    private static ScheduleSaw Saw(string id, int jobs) => new()
    {
        SawId = id,
        // Shifts of a job each, with overtime between: one stretch.
        Windows = [.. Enumerable.Range(0, jobs).Select(job => new TimeWindow((long)job * JobSeconds, ((job + 1L) * JobSeconds) - 1))],
        Overtime = [.. Enumerable.Range(1, jobs).Select(job => new OvertimeWindow(new(((long)job * JobSeconds) - 1, (long)job * JobSeconds), 1))],
        InitialState = new("section 0", "A", "B"),
        SetUpTimes = new(5, 0, 0),
    };

    private static ScheduleJob Job(int job, string sawId, IReadOnlyList<string> after) => new()
    {
        JobId = Id(job),
        After = after,
        Options =
        [
            new()
            {
                SawId = sawId,
                SetUp = new($"section {1 + (job % 2)}", "A", "B"),
                Steps = [.. Enumerable.Range(0, BarsOfJob).SelectMany(_ => new StepRun[] { new(10_000, 1, 0, StepKind.CraneLoad), new(10_000, 1, 1), new(10_000, 1, 1), new(10_000, 1, 0, StepKind.Handling) })],
                CostMicrosPerSecond = 1,
            },
        ],
    };

    private static ScheduledJob Placed(int job, string sawId, int place)
    {
        var start = (long)place * JobSeconds;
        return new()
        {
            JobId = Id(job),
            SawId = sawId,
            Sequence = place + 1,
            SetUps = [new("section", start, start + 5, $"O-{sawId}")],
            Work =
            [
                .. Enumerable.Range(0, BarsOfJob).Select(bar => start + 5 + (bar * 40)).SelectMany(at => new WorkSpan[]
                {
                    new(at, at + 10, 1, $"O-{sawId}", $"C-{sawId}"), new(at + 10, at + 40, 3),
                }),
            ],
        };
    }

    private static string Id(int job) => $"J{job:00000}";
}
