using System.Diagnostics;
using SawEngine.Core;
using SawEngine.Core.Scheduling;

namespace SawEngine.Benchmarks.Quality;

/// <summary>A schedule of an instance, its time, and what is wrong with it.</summary>
internal sealed record MeasuredSchedule(SchedulingInstance Instance, Schedule Schedule, double Seconds)
{
    /// <summary>Schedules an instance with a limit of seconds, none where it is null.</summary>
    public static MeasuredSchedule Of(IScheduler scheduler, SchedulingInstance instance, Effort effort, double? limit)
    {
        using var cancellation = limit is { } seconds ? new CancellationTokenSource(TimeSpan.FromSeconds(seconds)) : new CancellationTokenSource();
        var watch = Stopwatch.StartNew();
        var schedule = scheduler.Solve(instance.Problem, effort, cancellation.Token);
        return new(instance, schedule, watch.Elapsed.TotalSeconds);
    }

    /// <summary>The objective of the source.</summary>
    public long? Value { get; } = Instance.Stated.Value(Schedule.Jobs);

    /// <summary>Whether the engine proved its value to be the least.</summary>
    public bool IsProved => Schedule.BoundMicros == Schedule.CostMicros;

    /// <summary>Whether the value is the least there is.</summary>
    public bool IsOptimal => Value is not null && (IsProved || (Instance.IsProved && Value == Instance.Best));

    /// <summary>How far the value is above the least known, in percent of it; null where that is not known or 0.</summary>
    public double? ExcessPercent => Instance.Best is > 0 && Value is not null ? 100d * (Value - Instance.Best) / Instance.Best : null;

    /// <summary>Rules that the schedule breaks, and contradictions to what is known of the instance.</summary>
    public IEnumerable<string> Faults()
    {
        foreach (var violation in ScheduleVerifier.Verify(Instance.Problem, Schedule))
            yield return $"{violation.Code}: {violation.Detail}";
        if (Value != Schedule.CostMicros)
            yield return $"the value is {Value} by the rule of the source, and {Schedule.CostMicros} by the engine";
        if (Instance.IsProved && Value < Instance.Best)
            yield return $"the value {Value} is below the proved optimum {Instance.Best}";
        if (Instance.Best is { } best && Schedule.BoundMicros > best)
            yield return $"the bound {Schedule.BoundMicros} is above the value {best} that is known";
    }
}
