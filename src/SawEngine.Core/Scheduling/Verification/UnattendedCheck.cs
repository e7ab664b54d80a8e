namespace SawEngine.Core.Scheduling.Verification;

/// <summary>Whether a span that goes on unattended stays within what the saw may do by itself in each window.</summary>
internal sealed class UnattendedCheck(UnattendedRuns runs, SawCalendar calendar, Findings found)
{
    /// <summary>A step counts in every window that it overlaps.</summary>
    public void Run(ListedJob listed, WorkSpan span, List<StepRun> taken)
    {
        // It starts attended, so no window holds its start.
        var first = SawCalendar.LastFrom(calendar.Unattended, span.Start) + 1;
        var (run, begin) = (0, (Int128)0);
        for (var window = first; window < calendar.Unattended.Length && calendar.Unattended[window].Start < span.Finish; window++)
        {
            var (from, to) = (Within(calendar.Unattended[window].Start, span), Within(calendar.Unattended[window].End, span));
            while (run < taken.Count && begin + Milliseconds(taken[run]) <= from)
                begin += Milliseconds(taken[run++]);
            CheckWindow(listed, span, calendar.Unattended[window], Overlapping(taken, run, begin, from, to));
        }
    }

    private void CheckWindow(ListedJob listed, WorkSpan span, TimeWindow window, IEnumerable<(StepKind Kind, Int128 Steps)> steps)
    {
        Int128 bars = 0, cuts = 0, manual = 0;
        foreach (var (kind, count) in steps)
        {
            bars += kind == StepKind.Load ? count : 0;
            cuts += kind == StepKind.Cut ? count : 0;
            manual += kind is StepKind.Load or StepKind.Cut ? 0 : count;
        }
        if (manual > 0)
            found.Note(ScheduleRule.UnattendedManualStep, listed, $"has {manual} steps for a pair of hands in the unattended window from {window.Start}");
        if (bars > runs.Bars)
            found.Note(ScheduleRule.UnattendedBars, listed, $"loads {bars} times in the unattended window from {window.Start}, where {runs.Bars} may be");
        if (cuts > runs.Cuts)
            found.Note(ScheduleRule.UnattendedCuts, listed, $"makes {cuts} cuts in the unattended window from {window.Start}, where {runs.Cuts} may be");
        if (Math.Min(span.Finish, window.End) > (Int128)window.Start + runs.LongestSeconds)
            found.Note(ScheduleRule.UnattendedTooLong, listed, $"goes on for more than {runs.LongestSeconds} s in the unattended window from {window.Start}");
    }

    /// <summary>How many steps of each run overlap a window, in milliseconds from the start of the span.</summary>
    private static IEnumerable<(StepKind Kind, Int128 Steps)> Overlapping(List<StepRun> taken, int run, Int128 begin, Int128 from, Int128 to)
    {
        for (; run < taken.Count && begin < to; run++)
        {
            yield return (taken[run].Kind, Overlapping(taken[run], from - begin, to - begin));
            begin += Milliseconds(taken[run]);
        }
    }

    private static Int128 Overlapping(StepRun run, Int128 from, Int128 to)
    {
        if (run.Milliseconds == 0)
            return from < 0 ? run.Count : 0;
        var before = Int128.Max(0, from / run.Milliseconds);
        var until = Int128.Min(run.Count, (to + run.Milliseconds - 1) / run.Milliseconds);
        return Int128.Max(0, until - before);
    }

    private static Int128 Milliseconds(StepRun run) => (Int128)run.Milliseconds * run.Count;

    private static Int128 Within(long second, WorkSpan span) => ((Int128)second - span.Start) * 1000;
}
