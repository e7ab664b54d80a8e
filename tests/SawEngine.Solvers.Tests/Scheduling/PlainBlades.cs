using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Tests.Scheduling;

/// <summary>The blades of a saw, one by one: the mounted one, and those that lie ready.</summary>
internal sealed class PlainBlades
{
    private readonly List<(string Kind, long Life)> ready;
    private readonly Dictionary<string, long> putBack = [];
    private string kind;

    public PlainBlades(ScheduleSaw saw)
    {
        ready = saw.Shelf.Select(blade => (blade.BladeId, blade.RemainingLife)).ToList();
        (kind, Life) = (saw.InitialState.BladeId ?? "", saw.RemainingBladeLife);
    }

    public PlainBlades(PlainBlades other) => (ready, putBack, kind, Life) = ([.. other.ready], new(other.putBack), other.kind, other.Life);

    public long Life { get; set; }

    /// <summary>Mounts the one that lasts just long enough for some steps, or a new one; where steps are null the one of the kind that was put back last, or a new one.</summary>
    public void Mount(string? other, List<StepRun>? steps)
    {
        if (Life > 0)
        {
            ready.Add((kind, Life));
            putBack[kind] = Life;
        }
        kind = other ?? kind;
        Life = ScheduleSaw.FullBladeLife;
        if (steps is null)
        {
            if (putBack.TryGetValue(kind, out var last) && ready.Remove((kind, last)))
                Life = last;
            return;
        }
        var needed = steps.Sum(step => (decimal)step.BladeShare);
        var fits = ready.Where(blade => blade.Kind == kind && blade.Life > 0 && blade.Life >= needed && blade.Life < Life).OrderBy(blade => blade.Life).ToList();
        if (fits.Count == 0)
            return;
        ready.Remove(fits[0]);
        Life = fits[0].Life;
    }
}
