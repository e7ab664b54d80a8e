using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;
using SawEngine.Solvers.Scheduling.Resources;

namespace SawEngine.Solvers.Scheduling;

/// <summary>The problem by index, in canonical order whatever the order of its lists. What is called a job here may be a part of one that is split.</summary>
internal sealed class Shop
{
    /// <summary>Due where nothing is promised; far, yet safe to compute with.</summary>
    public const long NeverDue = long.MaxValue / 4;

    private readonly SawState[] initial;

    /// <summary>The shop of a problem with some jobs split.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="parts">Into how many parts, by job id; a job that is not named stays whole.</param>
    public Shop(ScheduleProblem problem, IReadOnlyDictionary<string, int>? parts = null)
        : this(problem, problem.Jobs.OrderBy(job => job.JobId, StringComparer.Ordinal).SelectMany(job => JobPart.Of(job, parts?.GetValueOrDefault(job.JobId, 1) ?? 1))) =>
        SplitJobs = parts ?? SplitJobs;

    /// <summary>The shop of some parts of jobs, by job id and first step.</summary>
    public Shop(ScheduleProblem problem, IEnumerable<JobPart> parts)
    {
        Problem = problem;
        Saws = [.. problem.Saws.OrderBy(saw => saw.SawId, StringComparer.Ordinal)];
        Parts = [.. parts];
        Jobs = [.. Parts.Select(part => part.Job)];
        Resources = new(problem, Saws);
        Clocks = [.. Saws.Select((saw, i) => new SawClock(saw, i, Resources.TeamOf(i)?.Present, new(saw, SetUpsOn(saw))))];
        Work = Array.ConvertAll(Jobs, _ => new SawWork?[Saws.Length]);
        initial = new SawState[Saws.Length];
        for (var saw = 0; saw < Saws.Length; saw++)
            AddSaw(saw);

        MakespanCostMicrosPerSecond = problem.MakespanCostMicrosPerSecond;
        var index = Enumerable.Range(0, Jobs.Length).ToLookup(job => Jobs[job].JobId, StringComparer.Ordinal);
        Before = Array.ConvertAll(Jobs, job => job.Frozen is null ? job.After.SelectMany(id => index[id]).Distinct().Order().ToArray() : []);
        Frozen = [.. Enumerable.Range(0, Saws.Length).Select(FrozenOn)];
        FrozenOrder = [.. Frozen.SelectMany((jobs, saw) => jobs.Select(job => (Saw: saw, Jobs[job].Frozen!.Start))).OrderBy(pair => pair.Start).Select(pair => pair.Saw)];
        Previous = Array.ConvertAll(Parts, part => part.FirstStep > 0 ? null : problem.Previous?.Places.FirstOrDefault(place => place.JobId == part.Job.JobId));
        Deliveries =
        [
            .. problem.Deliveries.OrderBy(delivery => delivery.DeliveryId, StringComparer.Ordinal).Select(delivery => new Promise(
                delivery.Due,
                delivery.CostMicrosPerHourLate,
                [.. delivery.JobIds.SelectMany(id => index[id]).Distinct().Order()])),
        ];
        Due = new long[Jobs.Length];
        Weight = new Int128[Jobs.Length];
        Array.Fill(Due, NeverDue);
        foreach (var delivery in Deliveries)
            AddPromise(delivery);
    }

    public ScheduleProblem Problem { get; }

    /// <summary>Into how many parts each job is split, by id; those that stay whole are not named.</summary>
    public IReadOnlyDictionary<string, int> SplitJobs { get; } = new Dictionary<string, int>();

    public ScheduleSaw[] Saws { get; }

    /// <summary>By index; <see cref="Jobs"/> are the jobs that they are of.</summary>
    public JobPart[] Parts { get; }

    public ScheduleJob[] Jobs { get; }

    public SawClock[] Clocks { get; }

    /// <summary>By job and saw; null where the job cannot run.</summary>
    public SawWork?[][] Work { get; }

    public Promise[] Deliveries { get; }

    /// <summary>Earliest promise of each job.</summary>
    public long[] Due { get; }

    /// <summary>Cost per hour late of each job's promises.</summary>
    public Int128[] Weight { get; }

    /// <summary>Jobs that are finished before each starts.</summary>
    public int[][] Before { get; }

    /// <summary>Frozen jobs by saw, in their order.</summary>
    public int[][] Frozen { get; }

    /// <summary>The saws of all frozen jobs, by their starts.</summary>
    public int[] FrozenOrder { get; }

    /// <summary>Each job's place in the earlier schedule; null where it has none.</summary>
    public PreviousPlace?[] Previous { get; }

    public ShopResources Resources { get; }

    /// <summary>Whether the times of one saw can depend on those of another.</summary>
    public bool IsCoupled => Resources.Any || Array.Exists(Before, before => before.Length > 0);

    public long MakespanCostMicrosPerSecond { get; }

    public SawState NewState(int saw) => new(initial[saw]);

    public bool IsFrozen(int job) => Jobs[job].Frozen is not null;

    /// <summary>Seconds of the set-up from one job to another on a saw.</summary>
    public long SetUpSeconds(int saw, SawState before, SawWork work) => Clocks[saw].SetUps.Seconds(before.SetUp, work.SetUpNumbers);

    private IEnumerable<SetUpState> SetUpsOn(ScheduleSaw saw) => Jobs.SelectMany(job => job.Options).Where(option => option.SawId == saw.SawId).Select(option => option.SetUp);

    private int[] FrozenOn(int saw) =>
    [
        .. Enumerable.Range(0, Jobs.Length).Where(job => Jobs[job].Frozen is not null && Work[job][saw] is not null)
            .OrderBy(job => Jobs[job].Frozen!.Start).ThenBy(job => job),
    ];

    private void AddSaw(int saw)
    {
        var id = Saws[saw].SawId;
        var blades = new List<string?> { Saws[saw].InitialState.BladeId };
        for (var job = 0; job < Jobs.Length; job++)
        {
            var option = Jobs[job].Options.FirstOrDefault(option => string.Equals(option.SawId, id, StringComparison.Ordinal));
            if (option is null || option.Steps.Any(run => run.BladeShare > ScheduleSaw.FullBladeLife) || (Jobs[job].Frozen is { } place && place.SawId != id))
                continue;
            var blade = option.SetUp.BladeId is { } bladeId ? IndexOf(blades, bladeId) : -1;
            Work[job][saw] = Jobs[job].Frozen is { } frozen
                ? new(option, Parts[job].Runs(option), Clocks[saw].SetUps.Of(option.SetUp), blade, Math.Max(0, frozen.Start)) { IsRunning = frozen.Start <= 0 }
                : new(option, Parts[job].Runs(option), Clocks[saw].SetUps.Of(option.SetUp), blade, Jobs[job].Release);
        }
        var shelf = Saws[saw].Shelf.Where(one => one.RemainingLife > 0).Select(one => (IndexOf(blades, one.BladeId), one.RemainingLife)).ToList();
        initial[saw] = new(Clocks[saw].SetUps.Of(Saws[saw].InitialState), 0, Saws[saw].RemainingBladeLife, shelf);
    }

    private static int IndexOf(List<string?> blades, string bladeId)
    {
        var index = blades.IndexOf(bladeId);
        if (index >= 0)
            return index;
        blades.Add(bladeId);
        return blades.Count - 1;
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
