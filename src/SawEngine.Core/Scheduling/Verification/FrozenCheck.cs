namespace SawEngine.Core.Scheduling.Verification;

/// <summary>Whether the frozen jobs of one saw are its first, in the order of their starts, and each starts when it must.</summary>
internal sealed class FrozenCheck(ScheduleSaw saw, SawCalendar calendar, ProblemIndex problem, Findings found)
{
    private readonly bool hasTeam = problem.TeamOf(saw.SawId) is not null;
    private readonly bool hasCranes = problem.CranesOf(saw.SawId) is not null;
    private ListedJob? last;
    private bool isFreeSeen;

    /// <summary>Checks the next job in sequence; the saw is busy with those before until the given second.</summary>
    public void Run(ListedJob listed, long busyUntil)
    {
        if (listed.Job.Frozen is { } elsewhere && !listed.IsFrozen)
            found.Note(ScheduleRule.FrozenSaw, listed, $"is frozen on saw {elsewhere.SawId}");
        if (!listed.IsFrozen)
        {
            isFreeSeen = true;
            return;
        }
        if (isFreeSeen || (last is not null && Compare(last, listed) > 0))
            found.Note(ScheduleRule.FrozenOrder, listed, "is frozen and comes after a job that it should go before");
        last = listed;
        if (listed.Scheduled.FirstStep == 0)
            CheckStart(listed, listed.Job.Frozen!, busyUntil);
    }

    private static int Compare(ListedJob one, ListedJob other)
    {
        var (first, second) = (one.Job.Frozen!.Start, other.Job.Frozen!.Start);
        return first != second ? first.CompareTo(second) : string.CompareOrdinal(one.Job.JobId, other.Job.JobId);
    }

    private void CheckStart(ListedJob listed, FrozenPlace place, long busyUntil)
    {
        if (listed.Start < place.Start)
            found.Note(ScheduleRule.FrozenStart, listed, $"starts at {listed.Start} and is frozen from {place.Start} on");
        else if (!MayWait(listed) && FirstIdle(listed, Math.Max(0, Math.Max(place.Start, busyUntil))) is { } idle)
            found.Note(ScheduleRule.FrozenStart, listed, $"starts at {listed.Start} though the saw stands idle from {idle}");
    }

    // For an operator, or for a crane that loads its first bar.
    private bool MayWait(ListedJob listed) => hasTeam || (hasCranes && listed.Option.Steps is [{ Kind: StepKind.CraneLoad }, ..]);

    /// <summary>The first second from the given one on at which the saw is attended, does nothing for the job, and has room for what comes next; null where there is none.</summary>
    private long? FirstIdle(ListedJob listed, long from)
    {
        var parts = listed.Scheduled.SetUps.Where(part => part.Start < listed.Start).OrderBy(part => part.Start).ToList();
        for (var window = Math.Max(0, SawCalendar.LastFrom(calendar.Regular, from)); window < calendar.Regular.Length; window++)
        {
            var (at, end) = (Math.Max(from, calendar.Regular[window].Start), Math.Min(calendar.Regular[window].End, listed.Start));
            foreach (var part in parts.Where(part => part.Finish > at && part.Start < end))
            {
                if (part.Start > at)
                    return at;
                at = Math.Max(at, part.Finish);
            }
            if (at < end && (end < calendar.Regular[window].End || NextSeconds(listed, parts, end) <= (Int128)end - at))
                return at;
            if (end == listed.Start)
                break;
        }
        return null;
    }

    /// <summary>What the next thing takes that starts at or after a second: a set-up part, the first step, or all of a job that runs through.</summary>
    private static Int128 NextSeconds(ListedJob listed, List<ScheduledSetUp> parts, long second)
    {
        if (parts.Find(part => part.Start >= second) is { } next)
            return parts.Where(part => part.Start == next.Start).Max(part => (Int128)part.Finish - part.Start);
        return listed.Option.MayPause
            ? ((Int128)listed.Option.Steps.Select(run => run.Milliseconds).FirstOrDefault() + 999) / 1000
            : (Int128)listed.Finish - listed.Start;
    }
}
