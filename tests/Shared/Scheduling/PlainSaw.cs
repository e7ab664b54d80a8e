using SawEngine.Core.Scheduling;

namespace SawEngine.Tests.Scheduling;

/// <summary>One saw of a <see cref="PlainShop"/>: second by second when it is attended, when it may run by itself, and when it is busy.</summary>
internal sealed class PlainSaw
{
    public const int Horizon = 8_000;

    private readonly int[] window = new int[Horizon];

    public PlainSaw(ScheduleProblem problem, ScheduleSaw saw, bool usesOvertime)
    {
        Saw = saw;
        Team = [.. problem.Operators.Where(one => one.SawIds.Contains(saw.SawId))];
        Cranes = [.. problem.Cranes.Where(crane => crane.SawIds.Contains(saw.SawId)).Select(crane => crane.CraneId)];
        foreach (var attended in saw.Windows.Concat(saw.Overtime.Where(_ => usesOvertime).Select(overtime => overtime.Window)))
            Array.Fill(window, Attended, (int)attended.Start, (int)attended.Seconds);
        for (var i = 0; i < saw.Unattended?.Windows.Count; i++)
            Array.Fill(window, i + 1, (int)saw.Unattended.Windows[i].Start, (int)saw.Unattended.Windows[i].Seconds);
        (BladeId, Life) = (saw.InitialState.BladeId, saw.RemainingBladeLife);
        Ready = [.. saw.Shelf.Select(blade => ((string?)blade.BladeId, blade.RemainingLife))];
        State = [saw.InitialState.GradeGroup, saw.InitialState.Section, saw.InitialState.Angle];
    }

    private PlainSaw(PlainSaw other)
    {
        (Saw, Team, Cranes, window) = (other.Saw, other.Team, other.Cranes, other.window);
        (At, Sequence, BladeId, Life) = (other.At, other.Sequence, other.BladeId, other.Life);
        (Ready, State, Busy) = ([.. other.Ready], [.. other.State], (bool[])other.Busy.Clone());
    }

    private const int Attended = -1;

    public ScheduleSaw Saw { get; }

    public List<ScheduleOperator> Team { get; }

    public List<string> Cranes { get; }

    public int At { get; set; }

    public int Sequence { get; set; }

    public string? BladeId { get; private set; }

    public long Life { get; private set; }

    public List<(string? BladeId, long Life)> Ready { get; }

    /// <summary>Grade group, section and angle.</summary>
    public string?[] State { get; }

    /// <summary>Seconds at which it is set up or at work attended.</summary>
    public bool[] Busy { get; } = new bool[Horizon];

    public PlainSaw Copy() => new(this);

    public bool IsAttended(int second) => second < Horizon && window[second] == Attended;

    public bool IsAttended(int start, int finish) => Enumerable.Range(start, Math.Max(1, finish - start)).All(IsAttended);

    /// <summary>Whether the saw is attended in between, or may run by itself.</summary>
    public bool MayRun(int start, int finish, bool unattended) =>
        Enumerable.Range(start, Math.Max(1, finish - start)).All(second => second < Horizon && (window[second] == Attended || (unattended && window[second] > 0)));

    public void Know(string? bladeId) => BladeId = bladeId ?? BladeId;

    public void Cut(long share) => Life -= share;

    public void Mount(string? bladeId, long life)
    {
        Ready.Remove((bladeId, life));
        if (Life > 0)
            Ready.Add((BladeId, Life));
        (BladeId, Life) = (bladeId, life);
    }
}
