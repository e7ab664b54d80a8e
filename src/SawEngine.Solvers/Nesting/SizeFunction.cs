namespace SawEngine.Solvers.Nesting;

/// <summary>
/// A superadditive, nondecreasing function of size: pieces that lie on one bar together measure no more than the bar, by the function as by length.
/// </summary>
internal abstract record SizeFunction
{
    public abstract long Of(long size);

    /// <summary>
    /// The sizes at which a function that costs a step more now and then, over this function, can be least between two sizes:
    /// where this function jumps up, and the ends of each stretch on which it grows, given where the cost jumps.
    /// </summary>
    public abstract IEnumerable<long> Candidates(long from, long to);

    /// <summary>Whether the function is constant around a size, so that cost over measure is least at the start of the stretch.</summary>
    public abstract bool IsFlatAt(long size);

    /// <summary>Size itself.</summary>
    public sealed record Identity : SizeFunction
    {
        public override long Of(long size) => size;

        public override IEnumerable<long> Candidates(long from, long to) => [from, to];

        public override bool IsFlatAt(long size) => false;
    }

    /// <summary>
    /// Sizes above <paramref name="Bar"/> - <paramref name="Small"/> count as a whole bar, those below <paramref name="Small"/> as nothing
    /// (bound L2 of Martello and Toth 1990, as a function by Fekete and Schepers 2001). Sizes are at most <paramref name="Bar"/>, and twice small not above it.
    /// </summary>
    public sealed record LargeOrSmall(long Bar, long Small) : SizeFunction
    {
        public override long Of(long size) => size > Bar - Small ? Bar : size < Small ? 0 : size;

        public override IEnumerable<long> Candidates(long from, long to)
        {
            if (Math.Max(from, Small) <= Math.Min(to, Bar - Small))
                yield return Math.Max(from, Small);
            if (Math.Max(from, Small) <= Math.Min(to, Bar - Small))
                yield return Math.Min(to, Bar - Small);
            if (to > Bar - Small)
                yield return Math.Max(from, Bar - Small + 1);
        }

        public override bool IsFlatAt(long size) => size > Bar - Small;
    }

    /// <summary>How often <paramref name="Unit"/> goes into (<paramref name="Factor"/> × size - <paramref name="Less"/>); less is 0 or 1.</summary>
    public sealed record WholeUnits(long Unit, long Factor, long Less) : SizeFunction
    {
        public override long Of(long size) => (Factor * size - Less) / Unit;

        public override IEnumerable<long> Candidates(long from, long to)
        {
            yield return from;
            for (var units = Of(from) + 1; units <= Of(to); units++)
                yield return (units * Unit + Less + Factor - 1) / Factor;
        }

        public override bool IsFlatAt(long size) => true;
    }
}
