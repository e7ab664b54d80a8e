namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>A layout as numbers of pieces, whatever their order in the bar.</summary>
/// <param name="Stock">Number of the stock type its bars are of.</param>
/// <param name="Counts">Pieces on one bar by piece type; as long in every layout.</param>
/// <param name="Repeat">Bars cut like this, at least 1.</param>
public sealed record CountedLayout(int Stock, IReadOnlyList<int> Counts, int Repeat);
