namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>One bar as numbers of pieces.</summary>
/// <param name="Stock">Number of the stock type.</param>
/// <param name="Counts">Pieces by piece type; as long for every bar.</param>
public sealed record FilledBar(int Stock, IReadOnlyList<int> Counts);
