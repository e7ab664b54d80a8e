using SawEngine.Core.SetUps;

namespace SawEngine.Core.Scheduling.Verification;

/// <summary>The work of one saw's jobs: steps, durations, pauses, wear of the blades, and what runs unattended.</summary>
internal sealed class WorkCheck(ScheduleSaw saw, SawCalendar calendar, BladeRack blades, ProblemIndex problem, Findings found)
{
    private readonly TimeWindow[]? onShift = problem.TeamOf(saw.SawId) is { } team ? SawCalendar.Joined(team.SelectMany(one => one.Windows)) : null;
    private readonly bool hasCranes = problem.CranesOf(saw.SawId) is not null;

    /// <summary>Follows the work, blade changes inside it included; adds the crane loads to the uses.</summary>
    public void Run(ListedJob listed, List<TimedItem> items, List<ResourceUse> uses)
    {
        var steps = new StepCursor(listed.Option.Steps, listed.Scheduled.FirstStep);
        var (before, isChanged) = ((TakenSpan?)null, false);
        foreach (var item in items)
        {
            if (item.Part is { Kind: SetUpRules.BladeWorn } part)
            {
                ChangeWornBlade(listed, steps, part);
                isChanged = true;
            }
            if (item.Span is not { } span)
                continue;
            if (span.Steps > steps.Remaining || span.Steps < Math.Min(steps.Total, 1))
                found.Note(ScheduleRule.WorkSteps, listed, $"has a span at {span.Start} with {span.Steps} steps where {steps.Remaining} are left");
            var taken = new TakenSpan(span, steps.Take(span.Steps));
            if (before is not null)
                CheckPause(listed, before, taken, isChanged);
            (before, isChanged) = (taken, false);
            CheckDuration(listed, taken);
            CheckWear(listed, taken);
            CheckCalendar(listed, taken);
            CheckCraneLoad(listed, taken, uses);
        }
    }

    private void ChangeWornBlade(ListedJob listed, StepCursor steps, ScheduledSetUp part)
    {
        if ((Int128)part.Finish - part.Start != saw.SetUpTimes.Blade)
            found.Note(ScheduleRule.SetUpDuration, listed, $"has {(Int128)part.Finish - part.Start} s for a worn blade where {saw.SetUpTimes.Blade} are due");
        if (steps.NextShare() <= blades.Life)
            found.Note(ScheduleRule.SetUpUnneeded, listed, $"changes the blade at {part.Start} though the next cut could be made");
        if (!blades.Mount(blades.BladeId, part.MountedLife ?? ScheduleSaw.FullBladeLife))
            found.Note(ScheduleRule.BladeNotReady, listed, $"mounts a blade with {part.MountedLife} billionths of its life left at {part.Start}, and none such lies ready");
    }

    private void CheckPause(ListedJob listed, TakenSpan before, TakenSpan taken, bool isChanged)
    {
        var (from, to, start) = (StretchAtEnd(before.Span), StretchAtStart(taken.Span), taken.Span.Start);
        var waits = isChanged || IsCraneLoad(before) || IsCraneLoad(taken) || (onShift is not null && start > before.Span.Finish);
        var isBreak = from != to || IsLeftAlone(before.Span.Finish, start) || (!waits && calendar.HoldsOvertime(before.Span.Finish, start));
        if (!listed.Option.MayPause && isBreak && IsInCalendar(before.Span) && IsInCalendar(taken.Span))
            found.Note(ScheduleRule.WorkPaused, listed, $"pauses before {start} and must run through");
        if (!isBreak && !waits && from != SawCalendar.None)
            found.Note(ScheduleRule.WorkSplit, listed, $"stops before {start} though no break and no blade change is there");
    }

    private void CheckDuration(ListedJob listed, TakenSpan taken)
    {
        var span = taken.Span;
        var milliseconds = taken.Steps.Aggregate((Int128)0, (sum, run) => sum + ((Int128)run.Milliseconds * run.Count));
        var seconds = (milliseconds + 999) / 1000;
        if ((Int128)span.Finish - span.Start != seconds)
            found.Note(ScheduleRule.WorkDuration, listed, $"has a span of {(Int128)span.Finish - span.Start} s whose steps take {seconds} s");
    }

    private void CheckWear(ListedJob listed, TakenSpan taken)
    {
        foreach (var run in taken.Steps)
            if (!blades.Use((Int128)run.BladeShare * run.Count))
                found.Note(ScheduleRule.BladeWornOut, listed, $"begins a cut in the span at {taken.Span.Start} that its blade cannot finish");
    }

    private void CheckCalendar(ListedJob listed, TakenSpan taken)
    {
        var span = taken.Span;
        if (calendar.StretchOf(span.Start, span.Finish) != SawCalendar.None)
            return;
        if (!IsInCalendar(span))
            found.Note(ScheduleRule.WorkOutsideShift, listed, $"has an interval {span.Start} to {span.Finish} that lies in no window of the saw");
        else if (calendar.StretchAt(span.Start) == SawCalendar.None)
            found.Note(ScheduleRule.UnattendedStart, listed, $"starts at {span.Start}, where nobody attends the saw");
        else if (!listed.Option.MayRunUnattended || !listed.Option.MayPause)
            found.Note(ScheduleRule.UnattendedNotAllowed, listed, $"goes on between {span.Start} and {span.Finish} where nobody attends the saw, and must not run unattended");
        else
            new UnattendedCheck(saw.Unattended!, calendar, found).Run(listed, span, taken.Steps);
    }

    private void CheckCraneLoad(ListedJob listed, TakenSpan taken, List<ResourceUse> uses)
    {
        var span = taken.Span;
        if (IsCraneLoad(taken))
        {
            if (span.Steps != 1)
                found.Note(ScheduleRule.CraneLoadNotAlone, listed, $"has a crane load among the {span.Steps} steps of the span at {span.Start}");
            uses.Add(new(listed, span.Start, span.Finish, span.OperatorId, span.CraneId, IsCraneLoad: true));
            return;
        }
        if (span.CraneId is not null)
            found.Note(ScheduleRule.CraneUnneeded, listed, $"names the crane {span.CraneId} for the span at {span.Start}, which needs none");
        if (span.OperatorId is not null)
            found.Note(ScheduleRule.OperatorUnneeded, listed, $"names the operator {span.OperatorId} for the span at {span.Start}, which keeps no hands busy");
    }

    // Where no crane reaches the saw, its bars are loaded like any.
    private bool IsCraneLoad(TakenSpan taken) => hasCranes && taken.Steps.Exists(run => run.Kind == StepKind.CraneLoad);

    // When nobody of its team is on shift, a saw is not attended, whatever its own windows say.
    private bool IsLeftAlone(long from, long until) => from < until && onShift is not null && SawCalendar.Holding(onShift, from, until) == SawCalendar.None;

    private bool IsInCalendar(WorkSpan span) => calendar.MayRunThrough(span.Start, span.Finish);

    private int StretchAtEnd(WorkSpan span) =>
        calendar.StretchOf(span.Start, span.Finish) is >= 0 and var stretch ? stretch : calendar.StretchBefore(span.Finish);

    private int StretchAtStart(WorkSpan span) =>
        calendar.StretchOf(span.Start, span.Finish) is >= 0 and var stretch ? stretch : calendar.StretchAt(span.Start);

    private sealed record TakenSpan(WorkSpan Span, List<StepRun> Steps);
}
