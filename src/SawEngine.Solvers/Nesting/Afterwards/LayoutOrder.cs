namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>An order in which layouts are cut, and how many order lines are open at once in it. A line is open from its first to its last layout.</summary>
/// <param name="Order">Layout numbers in the order in which they are cut; every layout once.</param>
/// <param name="LargestOpen">The largest number of order lines open while any one layout is cut.</param>
/// <param name="LowerBound">No order of these layouts has fewer open at its worst.</param>
/// <param name="Steps">Steps taken by the search.</param>
public sealed record LayoutOrder(IReadOnlyList<int> Order, int LargestOpen, int LowerBound, long Steps)
{
    /// <summary>No order is better.</summary>
    public bool Proved => LargestOpen == LowerBound;

    /// <summary>Is there an order with at most so many open? Null where the search ended before that was known.</summary>
    public bool? Within(int limit) => LargestOpen <= limit ? true : LowerBound > limit ? false : null;
}
