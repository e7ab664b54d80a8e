namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>Sequences at one moment.</summary>
internal sealed class SequencesCopy
{
    private readonly Sequences sequences;
    private readonly int[][] jobs;
    private readonly int[] counts;
    private readonly long[] versions;

    public SequencesCopy(Sequences sequences)
    {
        this.sequences = sequences;
        jobs = [.. sequences.Saws.Select(_ => new int[sequences.Jobs])];
        counts = new int[jobs.Length];
        versions = new long[jobs.Length];
        Array.Fill(versions, -1);
        Take();
    }

    /// <summary>Cost of the copy, in the units of the search.</summary>
    public long Cost { get; private set; }

    /// <summary>What the search lessens.</summary>
    public long Total { get; private set; }

    public ReadOnlySpan<int> Jobs(int saw) => jobs[saw].AsSpan(0, counts[saw]);

    public void Take()
    {
        for (var i = 0; i < jobs.Length; i++)
        {
            var saw = sequences.Saws[i];
            if (versions[i] == saw.Version)
                continue;
            saw.Jobs.AsSpan(1, saw.Count).CopyTo(jobs[i]);
            (counts[i], versions[i]) = (saw.Count, saw.Version);
        }
        (Cost, Total) = (sequences.Cost(), sequences.Total());
    }

    public void PutBack()
    {
        for (var i = 0; i < jobs.Length; i++)
            if (sequences.Saws[i].Version != versions[i])
                sequences.Saws[i].Set(Jobs(i), versions[i]);
    }
}
