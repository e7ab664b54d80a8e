using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Solvers.Tests.Scheduling;

/// <summary>Places jobs step by step, as one would by hand: slow, and independent of the engine's clock.</summary>
internal static class PlainClock
{
    /// <summary>The jobs of one saw with their times; null where one does not fit.</summary>
    public static List<ScheduledJob>? Place(ScheduleSaw saw, IEnumerable<ScheduleJob> sequence)
    {
        var (at, state, placed) = (0L, saw.InitialState, new List<ScheduledJob>());
        var blades = new PlainBlades(saw);
        foreach (var job in sequence)
        {
            var option = job.Options.Single(option => option.SawId == saw.SawId);
            var setUps = new List<ScheduledSetUp>();
            var steps = option.Steps.SelectMany(run => Enumerable.Repeat(run with { Count = 1 }, run.Count)).ToList();
            var changes = option.SetUp.BladeId is { } blade && blade != state.BladeId;
            if (changes)
                blades.Mount(option.SetUp.BladeId, saw.SetUpTimes.Blade == 0 ? null : steps);
            foreach (var part in SetUpRules.Between(state, option.SetUp, saw.SetUpTimes))
                if (!SetUp(saw, part.Kind, part.Seconds, part.Kind == "blade" ? blades.Life : null, setUps, ref at))
                    return null;
            state = SetUpRules.After(state, option.SetUp);
            if (steps.Count > 0 && steps[0].BladeShare > blades.Life)
            {
                blades.Mount(null, steps);
                if (!SetUp(saw, "bladeWorn", saw.SetUpTimes.Blade, blades.Life, setUps, ref at))
                    return null;
            }
            var work = Work(saw, job, option, steps, setUps, ref at, ref blades);
            if (work is null)
                return null;
            placed.Add(new() { JobId = job.JobId, SawId = saw.SawId, Sequence = placed.Count + 1, SetUps = setUps, Work = work });
        }
        return placed;
    }

    private static List<WorkSpan>? Work(
        ScheduleSaw saw, ScheduleJob job, JobOption option, List<StepRun> steps, List<ScheduledSetUp> setUps, ref long at, ref PlainBlades blades)
    {
        if (option.MayPause)
            return Steps(saw, saw.Windows, job, steps, setUps, ref at, ref blades);
        foreach (var window in saw.Windows)
        {
            var (tryAt, tryBlades, trySetUps) = (at, new PlainBlades(blades), new List<ScheduledSetUp>());
            if (Steps(saw, [window], job, steps, trySetUps, ref tryAt, ref tryBlades) is not { } work)
                continue;
            (at, blades) = (tryAt, tryBlades);
            setUps.AddRange(trySetUps);
            return work;
        }
        return null;
    }

    private static List<WorkSpan>? Steps(
        ScheduleSaw saw, IReadOnlyList<TimeWindow> windows, ScheduleJob job, List<StepRun> steps, List<ScheduledSetUp> setUps, ref long at, ref PlainBlades blades)
    {
        var spans = new List<(long Start, long Milliseconds, int Steps)>();
        if (steps.Count == 0)
        {
            if (Find(windows, Math.Max(at, job.Release), 0) is not { } empty)
                return null;
            at = empty;
            return [new(empty, empty, 0)];
        }
        var fresh = true;
        foreach (var (step, i) in steps.Select((step, i) => (step, i)))
        {
            if (step.BladeShare > blades.Life)
            {
                blades.Mount(null, steps[i..]);
                if (!SetUp(saw with { Windows = windows }, "bladeWorn", saw.SetUpTimes.Blade, blades.Life, setUps, ref at))
                    return null;
                fresh = true;
            }
            blades.Life -= step.BladeShare;
            if (!fresh && EndsInWindow(windows, spans[^1].Start, spans[^1].Milliseconds + step.Milliseconds))
            {
                spans[^1] = (spans[^1].Start, spans[^1].Milliseconds + step.Milliseconds, spans[^1].Steps + 1);
            }
            else
            {
                if (Find(windows, Math.Max(at, job.Release), step.Milliseconds) is not { } start)
                    return null;
                spans.Add((start, step.Milliseconds, 1));
            }
            fresh = false;
            at = spans[^1].Start + ((spans[^1].Milliseconds + 999) / 1000);
        }
        return spans.ConvertAll(span => new WorkSpan(span.Start, span.Start + ((span.Milliseconds + 999) / 1000), span.Steps));
    }

    private static bool SetUp(ScheduleSaw saw, string kind, long seconds, long? mounted, List<ScheduledSetUp> setUps, ref long at)
    {
        if (Find(saw.Windows, at, seconds * 1000) is not { } start)
            return false;
        setUps.Add(new(kind, start, start + seconds, null, mounted));
        at = start + seconds;
        return true;
    }

    private static bool EndsInWindow(IReadOnlyList<TimeWindow> windows, long start, long milliseconds) =>
        windows.Any(window => window.Start <= start && start < window.End && (start * 1000) + milliseconds <= window.End * 1000);

    private static long? Find(IReadOnlyList<TimeWindow> windows, long from, long milliseconds)
    {
        foreach (var window in windows)
        {
            var start = Math.Max(from, window.Start);
            if (EndsInWindow([window], start, milliseconds))
                return start;
        }
        return null;
    }
}
