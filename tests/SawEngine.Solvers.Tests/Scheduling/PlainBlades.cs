using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Tests.Scheduling;

/// <summary>The blades of a saw, one by one: the mounted one, and those that lie ready.</summary>
internal sealed class PlainBlades
{
    private readonly List<(string Kind, long Life)> ready;
    private string kind;

    public PlainBlades(ScheduleSaw saw)
    {
        ready = saw.Shelf.Select(blade => (blade.BladeId, blade.RemainingLife)).ToList();
        (kind, Life) = (saw.InitialState.BladeId ?? "", saw.RemainingBladeLife);
    }

    public PlainBlades(PlainBlades other) => (ready, kind, Life) = ([.. other.ready], other.kind, other.Life);

    public long Life { get; set; }

    /// <summary>Mounts the one that lasts just long enough for some steps, or a new one; always a new one where steps are null.</summary>
    public void Mount(string? other, List<StepRun>? steps)
    {
        ready.Add((kind, Life));
        kind = other ?? kind;
        Life = ScheduleSaw.FullBladeLife;
        if (steps is null)
            return;
        var needed = steps.Sum(step => (decimal)step.BladeShare);
        var fits = ready.Where(blade => blade.Kind == kind && blade.Life > 0 && blade.Life >= needed && blade.Life < Life).OrderBy(blade => blade.Life).ToList();
        if (fits.Count == 0)
            return;
        ready.Remove(fits[0]);
        Life = fits[0].Life;
    }
}
