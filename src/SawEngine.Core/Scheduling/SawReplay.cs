using SawEngine.Core.SetUps;

namespace SawEngine.Core.Scheduling;

/// <summary>Runs one saw's jobs again in their sequence and notes what breaks a rule. It shares no code with what made the schedule.</summary>
internal sealed class SawReplay(ScheduleSaw saw, List<Violation> found)
{
    private readonly Dictionary<string, long> lives = new(StringComparer.Ordinal)
    {
        [saw.InitialState.BladeId ?? ""] = saw.RemainingBladeLife,
    };

    private string? section = saw.InitialState.Section;
    private string? gradeGroup = saw.InitialState.GradeGroup;
    private string? blade = saw.InitialState.BladeId;
    private long clock = long.MinValue;
    private int sequence;

    /// <summary>Whether the job has work that can be replayed.</summary>
    public bool Run(ScheduleJob job, JobOption option, ScheduledJob scheduled)
    {
        if (scheduled.Sequence != ++sequence)
            Note(ScheduleRule.SequenceBroken, scheduled, $"has sequence {scheduled.Sequence} where {sequence} is due");
        if (scheduled.Work.Count == 0)
        {
            Note(ScheduleRule.WorkSteps, scheduled, "has no work");
            return false;
        }
        if (scheduled.Work[0].Start < job.Release)
            Note(ScheduleRule.WorkBeforeRelease, scheduled, $"starts at {scheduled.Work[0].Start}, before its release at {job.Release}");
        var events = Events(scheduled);
        CheckTimes(scheduled, events);
        CheckLeadingSetUps(option, scheduled);
        Work(option, scheduled, events);
        return true;
    }

    private long Life
    {
        get => lives.GetValueOrDefault(blade ?? "", ScheduleSaw.FullBladeLife);
        set => lives[blade ?? ""] = value;
    }

    private void CheckTimes(ScheduledJob scheduled, List<Event> events)
    {
        foreach (var item in events)
        {
            if (item.Start < 0)
                Note(ScheduleRule.StartsBeforePlan, scheduled, $"has an interval that starts at {item.Start}");
            if (item.Start < clock)
                Note(ScheduleRule.Overlap, scheduled, $"has an interval that starts at {item.Start} while the saw is busy until {clock}");
            if (WindowOf(item) < 0)
                Note(
                    item.Part is null ? ScheduleRule.WorkOutsideShift : ScheduleRule.SetUpOutsideShift,
                    scheduled,
                    $"has an interval {item.Start} to {item.Finish} that lies in no window of the saw");
            clock = Math.Max(clock, item.Finish);
        }
    }

    private void CheckLeadingSetUps(JobOption option, ScheduledJob scheduled)
    {
        var needed = Needed(option.SetUp);
        var listed = scheduled.SetUps.Where(part => part.Kind != SetUpRules.BladeWorn).ToList();
        foreach (var (kind, seconds) in needed)
        {
            var part = listed.Find(part => part.Kind == kind);
            if (part is null)
                Note(ScheduleRule.SetUpMissing, scheduled, $"needs the set-up {kind}");
            else if (part.Finish - part.Start != seconds)
                Note(ScheduleRule.SetUpDuration, scheduled, $"has {part.Finish - part.Start} s of set-up {kind} where {seconds} are due");
        }
        var kinds = listed.ConvertAll(part => part.Kind);
        foreach (var kind in kinds.Where((kind, i) => !needed.Exists(part => part.Kind == kind) || kinds.IndexOf(kind) < i))
            Note(ScheduleRule.SetUpUnneeded, scheduled, $"has a set-up {kind} that nothing calls for");
        if (!InOrder(scheduled, needed.ConvertAll(part => part.Kind)))
        {
            var order = string.Join(", ", scheduled.SetUps.Select(part => part.Kind));
            Note(ScheduleRule.SetUpOrder, scheduled, $"has its set-up parts in the order {order}");
        }
        section = option.SetUp.Section ?? section;
        gradeGroup = option.SetUp.GradeGroup ?? gradeGroup;
        blade = option.SetUp.BladeId ?? blade;
    }

    // By start, those between jobs before any worn blade and before the work, and among themselves in the order in which they are done.
    private static bool InOrder(ScheduledJob scheduled, List<string> needed)
    {
        var parts = scheduled.SetUps;
        var between = parts.TakeWhile(part => part.Kind != SetUpRules.BladeWorn).ToList();
        var start = scheduled.Work[0].Start;
        var kinds = between.Select(part => part.Kind).Where(needed.Contains).Distinct().ToList();
        return parts.Zip(parts.Skip(1)).All(pair => pair.First.Start <= pair.Second.Start)
            && parts.Skip(between.Count).All(part => part.Kind == SetUpRules.BladeWorn)
            && !between.Exists(part => part.Start >= start && part.Finish > start)
            && kinds.SequenceEqual(needed.Where(kinds.Contains));
    }

    // In the order in which they are done.
    private List<(string Kind, long Seconds)> Needed(SetUpState to)
    {
        var needed = new List<(string Kind, long Seconds)>();
        if (to.GradeGroup is not null && to.GradeGroup != gradeGroup)
            needed.Add(("gradeGroup", saw.SetUpTimes.GradeGroup));
        if (to.BladeId is not null && to.BladeId != blade)
            needed.Add(("blade", saw.SetUpTimes.Blade));
        if (to.Section is not null && to.Section != section)
            needed.Add(("section", SectionSeconds(to.Section)));
        needed.RemoveAll(part => part.Seconds == 0);
        return needed;
    }

    private long SectionSeconds(string to)
    {
        if (saw.SetUpTimes.SectionChanges is { } changes)
            foreach (var pair in changes.Pairs)
                if (pair.To == to && pair.From == section)
                    return pair.Seconds;
        return saw.SetUpTimes.Section;
    }

    private void Work(JobOption option, ScheduledJob scheduled, List<Event> events)
    {
        var steps = new StepCursor(option.Steps);
        var (lastWindow, changed) = (-1, false);
        foreach (var item in events)
        {
            if (item.Part is { Kind: SetUpRules.BladeWorn } part)
            {
                ChangeWornBlade(steps, scheduled, part);
                changed = true;
            }
            if (item.Span is not { } span)
                continue;
            var window = WindowOf(item);
            if (lastWindow >= 0 && window == lastWindow && !changed)
                Note(ScheduleRule.WorkSplit, scheduled, $"stops before {span.Start} though no break and no blade change is there");
            if (lastWindow >= 0 && window >= 0 && window != lastWindow && !option.MayPause)
                Note(ScheduleRule.WorkPaused, scheduled, $"pauses before {span.Start} and must run through");
            (lastWindow, changed) = (window, false);
            Cut(steps, scheduled, span);
        }
        if (!steps.AtEnd)
            Note(ScheduleRule.WorkSteps, scheduled, "does not do all its steps");
    }

    private void ChangeWornBlade(StepCursor steps, ScheduledJob scheduled, ScheduledSetUp part)
    {
        if (part.Finish - part.Start != saw.SetUpTimes.Blade)
            Note(ScheduleRule.SetUpDuration, scheduled, $"has {part.Finish - part.Start} s for a worn blade where {saw.SetUpTimes.Blade} are due");
        if (steps.NextShare() <= Life)
            Note(ScheduleRule.SetUpUnneeded, scheduled, $"changes the blade at {part.Start} though the next cut could be made");
        Life = ScheduleSaw.FullBladeLife;
    }

    private void Cut(StepCursor steps, ScheduledJob scheduled, WorkSpan span)
    {
        if ((span.Steps <= 0 && !steps.AtEnd) || span.Steps > steps.Remaining)
            Note(ScheduleRule.WorkSteps, scheduled, $"has a span at {span.Start} with {span.Steps} steps where {steps.Remaining} are left");
        Int128 milliseconds = 0;
        foreach (var run in steps.Take(span.Steps))
        {
            milliseconds += (Int128)run.Milliseconds * run.Count;
            var left = Life - ((Int128)run.BladeShare * run.Count);
            if (left < 0)
                Note(ScheduleRule.BladeWornOut, scheduled, $"begins a cut in the span at {span.Start} that its blade cannot finish");
            Life = (long)Int128.Max(left, 0);
        }
        var seconds = (milliseconds + 999) / 1000;
        if (span.Finish - span.Start != seconds)
            Note(ScheduleRule.WorkDuration, scheduled, $"has a span of {span.Finish - span.Start} s whose steps take {seconds} s");
    }

    private int WindowOf(Event item)
    {
        for (var i = 0; i < saw.Windows.Count; i++)
            if (saw.Windows[i].Start <= item.Start && item.Finish <= saw.Windows[i].End)
                return i;
        return -1;
    }

    private static List<Event> Events(ScheduledJob scheduled) =>
    [
        .. scheduled.SetUps.Select(part => new Event(part.Start, part.Finish, part, null))
            .Concat(scheduled.Work.Select(span => new Event(span.Start, span.Finish, null, span)))
            .OrderBy(item => item.Start).ThenBy(item => item.Finish),
    ];

    private void Note(string code, ScheduledJob scheduled, string what) =>
        found.Add(new(code, $"Job {scheduled.JobId} on saw {saw.SawId} {what}."));

    private sealed record Event(long Start, long Finish, ScheduledSetUp? Part, WorkSpan? Span);

    /// <summary>Walks the steps of a job, a piece of a run at a time.</summary>
    private sealed class StepCursor(IReadOnlyList<StepRun> runs)
    {
        private int run;
        private int done;

        public long Remaining => runs.Skip(run).Sum(item => (long)item.Count) - done;

        public bool AtEnd => Remaining <= 0;

        /// <summary>Share of the next step that cuts; 0 where none is left.</summary>
        public long NextShare() => runs.Skip(run).FirstOrDefault(item => item.BladeShare > 0).BladeShare;

        public IEnumerable<StepRun> Take(int steps)
        {
            while (steps > 0 && run < runs.Count)
            {
                var current = runs[run];
                var count = Math.Min(steps, current.Count - done);
                steps -= count;
                done += count;
                if (done == current.Count)
                    (run, done) = (run + 1, 0);
                yield return current with { Count = count };
            }
        }
    }
}
