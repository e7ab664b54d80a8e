using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling.Resources;

/// <summary>Operators and cranes with what they are booked for; bookings can be taken back to a mark.</summary>
internal sealed class ShopResources
{
    private readonly Team?[] teams; // by saw
    private readonly (string CraneId, Timeline Busy)[][] cranes; // by saw
    private readonly Stack<(Timeline? Line, long Start, long Finish, Attendance? Attendance, int Saw)> booked = [];

    public ShopResources(ScheduleProblem problem, IReadOnlyList<ScheduleSaw> saws)
    {
        var teamOf = problem.Operators.GroupBy(one => string.Join('\n', one.SawIds.Order(StringComparer.Ordinal)), StringComparer.Ordinal)
            .Select(group => (SawIds: group.First().SawIds, Team: new Team([.. group], SawsOf(group.First().SawIds), problem.WalkingSeconds)))
            .SelectMany(pair => pair.SawIds.Select(sawId => (sawId, pair.Team)))
            .DistinctBy(pair => pair.sawId).ToDictionary(pair => pair.sawId, pair => pair.Team, StringComparer.Ordinal);
        teams = [.. saws.Select(saw => teamOf.GetValueOrDefault(saw.SawId))];
        int[] SawsOf(IReadOnlyList<string> sawIds) => [.. Enumerable.Range(0, saws.Count).Where(saw => sawIds.Contains(saws[saw].SawId, StringComparer.Ordinal))];
        var lines = problem.Cranes.OrderBy(crane => crane.CraneId, StringComparer.Ordinal).Select(crane => (crane.CraneId, crane.SawIds, Busy: new Timeline(0))).ToList();
        cranes = [.. saws.Select(saw => lines.Where(line => line.SawIds.Contains(saw.SawId, StringComparer.Ordinal)).Select(line => (line.CraneId, line.Busy)).ToArray())];
    }

    /// <summary>Whether saws can stand in each other's way.</summary>
    public bool Any => Array.Exists(teams, team => team is not null) || Array.Exists(cranes, reached => reached.Length > 0);

    public Team? TeamOf(int saw) => teams[saw];

    public bool HasCrane(int saw) => cranes[saw].Length > 0;

    /// <summary>How far the bookings go, for <see cref="BackTo"/>.</summary>
    public int Mark => booked.Count;

    public void Clear()
    {
        booked.Clear();
        for (var saw = 0; saw < teams.Length; saw++)
        {
            teams[saw]?.Clear();
            foreach (var crane in cranes[saw])
                crane.Busy.Clear();
        }
    }

    public void BackTo(int mark)
    {
        while (booked.Count > mark)
        {
            var (line, start, finish, attendance, saw) = booked.Pop();
            line?.Remove(start, finish);
            attendance?.RemoveLast(saw);
        }
    }

    /// <summary>The operator whose hands are free first, from a second on, for a length of time, and from when on; null where the saw needs none.</summary>
    public (OperatorHands? Hands, long Start) FirstHands(int saw, long from, long seconds)
    {
        if (teams[saw] is not { } team)
            return (null, from);
        var (best, start) = ((OperatorHands?)null, long.MaxValue);
        foreach (var one in team.Operators)
        {
            var free = one.FirstFree(from, seconds, saw);
            if (free < start)
                (best, start) = (one, free);
            if (start == from)
                break;
        }
        return (best, start);
    }

    /// <summary>The crane that is free first, and from when on.</summary>
    public ((string CraneId, Timeline Busy) Crane, long Start) FirstCrane(int saw, long from, long seconds)
    {
        var (best, start) = (cranes[saw][0], long.MaxValue);
        foreach (var crane in cranes[saw])
        {
            var free = crane.Busy.FirstFree(from, seconds, saw);
            if (free < start)
                (best, start) = (crane, free);
        }
        return (best, start);
    }

    public void Book(Timeline line, int saw, long start, long seconds)
    {
        line.Add(start, start + seconds, saw);
        booked.Push((line, start, start + seconds, null, saw));
    }

    /// <summary>Notes that a saw is at work attended.</summary>
    public void Attend(int saw, long start, long finish)
    {
        if (teams[saw]?.Attendance is not { } attendance || finish <= start)
            return;
        attendance.Add(saw, start, finish);
        booked.Push((null, start, finish, attendance, saw));
    }
}
