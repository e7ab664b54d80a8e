namespace SawEngine.Core.Scheduling.Verification;

/// <summary>Whether at each moment no more saws of a team are at work attended than its operators on shift attend.</summary>
internal sealed class AttendanceCheck(Findings found)
{
    /// <summary>Checks one team.</summary>
    /// <param name="team">Its operators.</param>
    /// <param name="saws">Its saws, each with its calendar and its jobs.</param>
    public void Run(IReadOnlyList<ScheduleOperator> team, IEnumerable<(SawCalendar Calendar, List<ListedJob> Jobs)> saws)
    {
        var changes = new List<Change>();
        foreach (var one in team)
            foreach (var window in one.Windows)
                changes.AddRange([new(window.Start, 0, one.MostSaws, null), new(window.End, 0, -one.MostSaws, null)]);
        foreach (var (calendar, jobs) in saws)
            AddBusy(changes, calendar, jobs);
        Sweep([.. changes.OrderBy(change => change.At)]);
    }

    private void Sweep(Change[] changes)
    {
        var (busy, attended, latest) = (0L, 0L, (ListedJob?)null);
        var noted = new HashSet<ListedJob>(ReferenceEqualityComparer.Instance);
        for (var i = 0; i < changes.Length; i++)
        {
            busy += changes[i].Busy;
            attended += changes[i].Attended;
            latest = changes[i].Starting ?? latest;
            var isSettled = i + 1 == changes.Length || changes[i + 1].At != changes[i].At;
            if (isSettled && busy > attended && noted.Add(latest!))
                found.Note(ScheduleRule.AttendanceExceeded, latest!, $"keeps one of {busy} saws at work at {changes[i].At}, where the operators on shift attend {attended}");
        }
    }

    // Where things overlap on one saw it is busy once.
    private static void AddBusy(List<Change> changes, SawCalendar calendar, List<ListedJob> jobs)
    {
        var until = long.MinValue;
        foreach (var (listed, item) in jobs.SelectMany(listed => TimedItem.Of(listed.Scheduled).Select(item => (listed, item))).OrderBy(one => one.item.Start))
        {
            foreach (var (start, finish) in Attended(calendar, Math.Max(until, item.Start), item.Finish))
                changes.AddRange([new(start, 1, 0, listed), new(finish, -1, 0, null)]);
            until = Math.Max(until, item.Finish);
        }
    }

    private static IEnumerable<(long Start, long Finish)> Attended(SawCalendar calendar, long start, long finish)
    {
        for (var window = Math.Max(0, SawCalendar.LastFrom(calendar.Unattended, start)); start < finish; window++)
        {
            var next = window < calendar.Unattended.Length ? calendar.Unattended[window] : new(finish, finish);
            if (start < Math.Min(next.Start, finish))
                yield return (start, Math.Min(next.Start, finish));
            start = Math.Max(start, next.End);
        }
    }

    private readonly record struct Change(long At, int Busy, int Attended, ListedJob? Starting);
}
