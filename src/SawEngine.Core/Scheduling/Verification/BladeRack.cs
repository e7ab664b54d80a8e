namespace SawEngine.Core.Scheduling.Verification;

/// <summary>The blades of one saw, each with its own remaining life: the mounted one and those that lie ready. New ones are always at hand.</summary>
internal sealed class BladeRack
{
    private readonly Dictionary<(string? BladeId, long Life), int> ready = [];
    private readonly Dictionary<ValueTuple<string?>, long> lastPutBack = [];

    public BladeRack(ScheduleSaw saw)
    {
        (BladeId, Life) = (saw.InitialState.BladeId, saw.RemainingBladeLife);
        foreach (var blade in saw.Shelf)
            Add(blade.BladeId, blade.RemainingLife);
    }

    /// <summary>Which blade is mounted; null where that is unknown.</summary>
    public string? BladeId { get; private set; }

    /// <summary>What is left of it, in billionths of a new one's life.</summary>
    public long Life { get; private set; }

    /// <summary>The mounted blade is known to be of this kind.</summary>
    public void Know(string? bladeId) => BladeId = bladeId;

    /// <summary>Life of the blade that was taken off last, or of a new one where it does not lie ready.</summary>
    public long LifePutBack(string bladeId) =>
        lastPutBack.TryGetValue(new(bladeId), out var life) && ready.ContainsKey((bladeId, life)) ? life : ScheduleSaw.FullBladeLife;

    /// <summary>Mounts a blade and puts the mounted one back; answers whether such a one lies ready.</summary>
    public bool Mount(string? bladeId, long life)
    {
        var isReady = life == ScheduleSaw.FullBladeLife || Take(bladeId, life);
        if (Life > 0)
        {
            Add(BladeId, Life);
            lastPutBack[new(BladeId)] = Life;
        }
        (BladeId, Life) = (bladeId, life);
        return isReady;
    }

    /// <summary>Uses up a share of the mounted blade; answers whether that much was left.</summary>
    public bool Use(Int128 share)
    {
        var left = Life - share;
        Life = (long)Int128.Clamp(left, 0, long.MaxValue);
        return left >= 0;
    }

    private void Add(string? bladeId, long life) => ready[(bladeId, life)] = ready.GetValueOrDefault((bladeId, life)) + 1;

    private bool Take(string? bladeId, long life)
    {
        if (!ready.Remove((bladeId, life), out var count))
            return false;
        if (count > 1)
            ready.Add((bladeId, life), count - 1);
        return true;
    }
}
