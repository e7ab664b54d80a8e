using System.Globalization;
using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Frozen jobs whose work starts, or goes on, later than they say: what holds them up.</summary>
internal static class FrozenStarts
{
    /// <summary>A warning for each, by job.</summary>
    public static IEnumerable<WarningJson> NotKept(ScheduleMapping mapping, Schedule schedule)
    {
        var scheduled = schedule.Jobs.ToLookup(job => job.JobId, StringComparer.Ordinal);
        foreach (var job in mapping.Problem.Jobs)
        {
            if (job.Frozen is not { } frozen || scheduled[job.JobId].MinBy(part => part.FirstStep) is not { } first)
                continue;
            var start = Math.Max(0, frozen.Start);
            if (first.Start > start && string.Equals(first.SawId, frozen.SawId, StringComparison.Ordinal))
                yield return Warning(mapping, schedule, first, start, isRunning: frozen.Start <= 0);
        }
    }

    private static WarningJson Warning(ScheduleMapping mapping, Schedule schedule, ScheduledJob job, long start, bool isRunning)
    {
        var saw = mapping.Problem.Saws.First(saw => string.Equals(saw.SawId, job.SawId, StringComparison.Ordinal));
        var before = schedule.Jobs.Where(other => string.Equals(other.SawId, job.SawId, StringComparison.Ordinal) && other.Sequence < job.Sequence && other.Finish > start)
            .MaxBy(other => other.Finish);
        var cause = before is not null ? $"job {before.JobId}, frozen before it on the saw, is at work until {At(before.Finish)}"
            : !IsAttended(saw, start) ? "the saw is not attended then"
            : "it waits for its set-up, an operator or a crane";
        return new()
        {
            Code = WarningCode.FrozenStartNotKept,
            JobId = job.JobId,
            SawId = job.SawId,
            Detail = isRunning
                ? $"Job {job.JobId} is running at the start of the plan and goes on at {At(job.Start)}: {cause}."
                : $"Job {job.JobId} is frozen from {At(start)} on and starts at {At(job.Start)}, as soon as it can: {cause}.",
        };

        string At(long second) => mapping.Clock.At(second).ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);
    }

    private static bool IsAttended(ScheduleSaw saw, long second) =>
        saw.Windows.Concat(saw.Overtime.Select(overtime => overtime.Window)).Any(window => window.Start <= second && second < window.End);
}
