using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Solvers.Scheduling;

/// <summary>A saw between two jobs. It is changed in place and copied where a job is only tried.</summary>
internal sealed class SawState
{
    private readonly long[] lives;
    private int blade;

    public SawState(SetUpState setUp, int blade, int blades, long remainingLife)
    {
        SetUp = setUp;
        this.blade = blade;
        lives = new long[blades];
        Array.Fill(lives, ScheduleSaw.FullBladeLife);
        lives[blade] = remainingLife;
    }

    public SawState(SawState other)
    {
        lives = new long[other.lives.Length];
        SetUp = other.SetUp;
        CopyFrom(other);
    }

    /// <summary>Second from which the saw is free.</summary>
    public long At { get; set; }

    /// <summary>No window before this one is of use any more.</summary>
    public int Window { get; set; }

    public SetUpState SetUp { get; private set; }

    /// <summary>What is left of the mounted blade, in billionths of a new one.</summary>
    public long Life
    {
        get => lives[blade];
        set => lives[blade] = value;
    }

    public void Mount(SawWork work)
    {
        SetUp = SetUpRules.After(SetUp, work.SetUp);
        if (work.Blade >= 0)
            blade = work.Blade;
    }

    public void CopyFrom(SawState other)
    {
        (At, Window, SetUp, blade) = (other.At, other.Window, other.SetUp, other.blade);
        Array.Copy(other.lives, lives, lives.Length);
    }
}
