using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <summary>A saw between two jobs. It is changed in place and copied where a job is only tried.</summary>
internal sealed class SawState
{
    private (int Blade, long Life)[] shelf;
    private int shelved;
    private (int Blade, long Life)[] putBack; // the last of each kind
    private int kindsPutBack;

    public SawState(SetUpNumbers setUp, int blade, long remainingLife, IEnumerable<(int Blade, long Life)> shelf)
    {
        SetUp = setUp;
        Blade = blade;
        Life = remainingLife;
        this.shelf = [.. shelf];
        shelved = this.shelf.Length;
        putBack = [];
    }

    public SawState(SawState other)
    {
        (shelf, putBack) = ([], []);
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
        PutBack();
        Blade = other >= 0 ? other : Blade;
        var (best, life) = (-1, ScheduleSaw.FullBladeLife);
        for (var i = 0; i < shelved; i++)
            if (shelf[i].Blade == Blade && shelf[i].Life >= share && shelf[i].Life < life)
                (best, life) = (i, shelf[i].Life);
        Take(best);
        Life = life;
    }

    /// <summary>Mounts the individual of a kind that was put back last, or a new one where it is gone.</summary>
    public void MountLast(int other)
    {
        PutBack();
        Blade = other;
        var life = ScheduleSaw.FullBladeLife;
        for (var i = 0; i < kindsPutBack; i++)
            if (putBack[i].Blade == other && Array.IndexOf(shelf, putBack[i], 0, shelved) is >= 0 and var at)
            {
                Take(at);
                life = putBack[i].Life;
            }
        Life = life;
    }

    public void CopyFrom(SawState other)
    {
        (At, Window, Unattended, SetUp, Blade, Life) = (other.At, other.Window, other.Unattended, other.SetUp, other.Blade, other.Life);
        if (shelf.Length < other.shelved)
            shelf = new (int, long)[other.shelved + 4];
        shelved = other.shelved;
        Array.Copy(other.shelf, shelf, shelved);
        if (putBack.Length < other.kindsPutBack)
            putBack = new (int, long)[other.kindsPutBack + 2];
        kindsPutBack = other.kindsPutBack;
        Array.Copy(other.putBack, putBack, kindsPutBack);
    }

    private void PutBack()
    {
        if (Life == 0)
            return;
        Append(ref shelf, ref shelved, (Blade, Life));
        for (var i = 0; i < kindsPutBack; i++)
            if (putBack[i].Blade == Blade)
            {
                putBack[i].Life = Life;
                return;
            }
        Append(ref putBack, ref kindsPutBack, (Blade, Life));
    }

    private void Take(int at)
    {
        if (at >= 0)
            shelf[at] = shelf[--shelved];
    }

    private static void Append(ref (int Blade, long Life)[] blades, ref int count, (int Blade, long Life) blade)
    {
        if (count == blades.Length)
            Array.Resize(ref blades, count + 4);
        blades[count++] = blade;
    }
}
