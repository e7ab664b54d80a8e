namespace SawEngine.Core.Scheduling.Verification;

/// <summary>Walks the steps of a job, a piece of a run at a time.</summary>
internal sealed class StepCursor
{
    private readonly IReadOnlyList<StepRun> runs;
    private int run;
    private int cutting;
    private long done;

    public StepCursor(IReadOnlyList<StepRun> runs, long firstStep)
    {
        this.runs = runs;
        Remaining = Total = runs.Sum(item => (long)item.Count);
        Take(firstStep);
    }

    public long Total { get; }

    public long Remaining { get; private set; }

    /// <summary>Share of the next step that cuts; 0 where none is left.</summary>
    public long NextShare()
    {
        cutting = Math.Max(cutting, run);
        while (cutting < runs.Count && runs[cutting].BladeShare == 0)
            cutting++;
        return cutting < runs.Count ? runs[cutting].BladeShare : 0;
    }

    /// <summary>Goes on by a number of steps, as far as there are any.</summary>
    public List<StepRun> Take(long steps)
    {
        var taken = new List<StepRun>();
        while (steps > 0 && run < runs.Count)
        {
            var count = Math.Min(steps, runs[run].Count - done);
            taken.Add(runs[run] with { Count = (int)count });
            steps -= count;
            done += count;
            Remaining -= count;
            if (done == runs[run].Count)
                (run, done) = (run + 1, 0);
        }
        return taken;
    }
}
