using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <summary>A saw between two jobs. It is changed in place and copied where a job is only tried.</summary>
internal sealed class SawState
{
    private (int Blade, long Life)[] shelf;
    private int shelved;

    public SawState(SetUpNumbers setUp, int blade, long remainingLife, IEnumerable<(int Blade, long Life)> shelf)
    {
        SetUp = setUp;
        Blade = blade;
        Life = remainingLife;
        this.shelf = [.. shelf];
        shelved = this.shelf.Length;
    }

    public SawState(SawState other)
    {
        shelf = [];
        SetUp = other.SetUp;
        CopyFrom(other);
    }

    /// <summary>Second from which the saw is free.</summary>
    public long At { get; set; }

    /// <summary>No attended window before this one is of use any more.</summary>
    public int Window { get; set; }

    /// <summary>The unattended window in which the saw ran last, with what it loaded and cut in it.</summary>
    public (int Window, int Bars, int Cuts) Unattended { get; set; }

    public SetUpNumbers SetUp { get; private set; }

    /// <summary>What is left of the mounted blade, in billionths of a new one.</summary>
    public long Life { get; set; }

    /// <summary>Index of the mounted blade on the saw.</summary>
    public int Blade { get; private set; }

    /// <summary>Notes what the saw is set up for, whatever was changed for it.</summary>
    public void SetUpFor(SawWork work)
    {
        SetUp = work.SetUpNumbers.After(SetUp);
        if (work.Blade >= 0)
            Blade = work.Blade;
    }

    /// <summary>
    /// Mounts an individual of a kind of blade (-1: of the mounted kind): the one with the least life that lasts for a share, else a new one. What is
    /// left of the blade before stays at hand.
    /// </summary>
    public void Mount(int other, Int128 share)
    {
        MountNew(other);
        var (best, life) = (-1, ScheduleSaw.FullBladeLife);
        for (var i = 0; i < shelved; i++)
            if (shelf[i].Blade == Blade && shelf[i].Life >= share && shelf[i].Life < life)
                (best, life) = (i, shelf[i].Life);
        if (best >= 0)
            shelf[best] = shelf[--shelved];
        Life = life;
    }

    /// <summary>Mounts a new individual; what is left of the blade before stays at hand.</summary>
    public void MountNew(int other)
    {
        if (Life > 0)
            Shelve(Blade, Life);
        if (other >= 0)
            Blade = other;
        Life = ScheduleSaw.FullBladeLife;
    }

    public void CopyFrom(SawState other)
    {
        (At, Window, Unattended, SetUp, Blade, Life) = (other.At, other.Window, other.Unattended, other.SetUp, other.Blade, other.Life);
        if (shelf.Length < other.shelved)
            shelf = new (int, long)[other.shelved + 4];
        shelved = other.shelved;
        Array.Copy(other.shelf, shelf, shelved);
    }

    private void Shelve(int kind, long life)
    {
        if (shelved == shelf.Length)
            Array.Resize(ref shelf, shelved + 4);
        shelf[shelved++] = (kind, life);
    }
}
