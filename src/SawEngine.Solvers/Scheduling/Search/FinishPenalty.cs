namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>
/// What the last finish of a saw costs a search that wants all of them before a target: much for each second beyond it, little for each
/// second at all, so that saws that are not the last still get room.
/// </summary>
internal readonly record struct FinishPenalty(long Target, long PerSecondBeyond, long PerSecond)
{
    /// <summary>What another second costs at least, and one less saves at most.</summary>
    public long SlopeAt(long finish) => PerSecond + (finish > Target ? PerSecondBeyond : 0);

    public long Of(long finish) => unchecked((PerSecond * finish) + (finish > Target ? PerSecondBeyond * (finish - Target) : 0));
}
