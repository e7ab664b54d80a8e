using SawEngine.Core.Scheduling;

namespace SawEngine.Solvers.Scheduling;

/// <summary>The problem by index, in canonical order whatever the order of its lists.</summary>
internal sealed class Shop
{
    /// <summary>Due where nothing is promised; far, yet safe to compute with.</summary>
    public const long NeverDue = long.MaxValue / 4;

    private readonly SawState[] initial;

    public Shop(ScheduleProblem problem)
    {
        Saws = [.. problem.Saws.OrderBy(saw => saw.SawId, StringComparer.Ordinal)];
        Jobs = [.. problem.Jobs.OrderBy(job => job.JobId, StringComparer.Ordinal)];
        Clocks = Array.ConvertAll(Saws, saw => new SawClock(saw));
        Work = Array.ConvertAll(Jobs, _ => new SawWork?[Saws.Length]);
        initial = new SawState[Saws.Length];
        for (var saw = 0; saw < Saws.Length; saw++)
            AddSaw(saw);

        MakespanCostMicrosPerSecond = problem.MakespanCostMicrosPerSecond;
        var index = Enumerable.Range(0, Jobs.Length).ToDictionary(job => Jobs[job].JobId, StringComparer.Ordinal);
        Deliveries =
        [
            .. problem.Deliveries.OrderBy(delivery => delivery.DeliveryId, StringComparer.Ordinal).Select(delivery => new Promise(
                delivery.Due,
                delivery.CostMicrosPerHourLate,
                [.. delivery.JobIds.Where(index.ContainsKey).Select(id => index[id]).Distinct().Order()])),
        ];
        Due = new long[Jobs.Length];
        Weight = new Int128[Jobs.Length];
        Array.Fill(Due, NeverDue);
        foreach (var delivery in Deliveries)
            AddPromise(delivery);
    }

    public ScheduleSaw[] Saws { get; }

    public ScheduleJob[] Jobs { get; }

    public SawClock[] Clocks { get; }

    /// <summary>By job and saw; null where the job cannot run.</summary>
    public SawWork?[][] Work { get; }

    public Promise[] Deliveries { get; }

    /// <summary>Earliest promise of each job.</summary>
    public long[] Due { get; }

    /// <summary>Cost per hour late of each job's promises.</summary>
    public Int128[] Weight { get; }

    public long MakespanCostMicrosPerSecond { get; }

    public SawState NewState(int saw) => new(initial[saw]);

    private void AddSaw(int saw)
    {
        var id = Saws[saw].SawId;
        var blades = new List<string?> { Saws[saw].InitialState.BladeId };
        for (var job = 0; job < Jobs.Length; job++)
        {
            var option = Jobs[job].Options.FirstOrDefault(option => string.Equals(option.SawId, id, StringComparison.Ordinal));
            if (option is null || option.Steps.Any(run => run.BladeShare > ScheduleSaw.FullBladeLife))
                continue;
            var blade = option.SetUp.BladeId is { } bladeId ? blades.IndexOf(bladeId) : -1;
            if (blade < 0 && option.SetUp.BladeId is not null)
            {
                blade = blades.Count;
                blades.Add(option.SetUp.BladeId);
            }
            Work[job][saw] = new(option, option.SetUp, blade, Jobs[job].Release);
        }
        initial[saw] = new(Saws[saw].InitialState, 0, blades.Count, Saws[saw].RemainingBladeLife);
    }

    private void AddPromise(Promise delivery)
    {
        if (delivery.Due is not { } due)
            return;
        foreach (var job in delivery.Jobs)
        {
            Due[job] = Math.Min(Due[job], due);
            Weight[job] += delivery.CostMicrosPerHourLate;
        }
    }
}
