namespace SawEngine.Solvers.Nesting.Pricing;

/// <summary>One layout: a column of the master program. Two are equal where bars and runs are.</summary>
/// <param name="Bars">Index of the alike bars that it is cut from.</param>
/// <param name="Runs">Types and counts of pieces.</param>
/// <param name="CostMicros">Cost of one bar.</param>
/// <param name="Laid">One such bar.</param>
internal sealed record Column(int Bars, (int Type, int Count)[] Runs, long CostMicros, OpenBar Laid)
{
    /// <summary>Whether no more pieces are given than are wanted.</summary>
    public bool IsProper(ReadOnlySpan<int> wanted)
    {
        foreach (var (type, count) in Runs)
        {
            if (count > wanted[type])
                return false;
        }
        return true;
    }

    /// <summary>What the layout costs beyond what its pieces are worth.</summary>
    public double Loss(ReadOnlySpan<double> duals)
    {
        var loss = (double)CostMicros;
        foreach (var (type, count) in Runs)
            loss -= count * duals[type];
        return loss;
    }

    public bool Equals(Column? other) => other is not null && Bars == other.Bars && Runs.AsSpan().SequenceEqual(other.Runs);

    public override int GetHashCode() => Runs.Aggregate(Bars, (hash, run) => unchecked(hash * 31 + run.Type * 7 + run.Count));
}
