using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling.Resources;

/// <summary>The operators who attend the same saws.</summary>
internal sealed class Team
{
    public Team(IReadOnlyList<ScheduleOperator> operators, int[] saws, long walkingSeconds)
    {
        Operators = [.. operators.OrderBy(one => one.OperatorId, StringComparer.Ordinal).Select(one => new OperatorHands(one, walkingSeconds))];
        var levels = Levels(operators);
        Present = Windows(levels);
        Attendance = levels.Exists(level => level.Saws > 0 && level.Saws < saws.Length) ? new(levels, saws) : null;
    }

    public OperatorHands[] Operators { get; }

    /// <summary>When somebody is on shift.</summary>
    public IReadOnlyList<TimeWindow> Present { get; }

    /// <summary>Null where those on shift can always attend all saws of the team.</summary>
    public Attendance? Attendance { get; }

    public void Clear()
    {
        Attendance?.Clear();
        foreach (var one in Operators)
            one.Busy.Clear();
    }

    private static List<(long From, int Saws)> Levels(IReadOnlyList<ScheduleOperator> operators)
    {
        var changes = new SortedDictionary<long, int> { [long.MinValue] = 0 };
        foreach (var one in operators)
            foreach (var window in one.Windows)
            {
                changes[window.Start] = changes.GetValueOrDefault(window.Start) + one.MostSaws;
                changes[window.End] = changes.GetValueOrDefault(window.End) - one.MostSaws;
            }
        var levels = new List<(long From, int Saws)>(changes.Count);
        var saws = 0;
        foreach (var (from, change) in changes)
            levels.Add((from, saws += change));
        return levels;
    }

    private static List<TimeWindow> Windows(List<(long From, int Saws)> levels)
    {
        var windows = new List<TimeWindow>();
        for (var i = 0; i + 1 < levels.Count; i++)
        {
            if (levels[i].Saws == 0)
                continue;
            if (windows.Count > 0 && windows[^1].End == levels[i].From)
                windows[^1] = windows[^1] with { End = levels[i + 1].From };
            else
                windows.Add(new(levels[i].From, levels[i + 1].From));
        }
        return windows;
    }
}
