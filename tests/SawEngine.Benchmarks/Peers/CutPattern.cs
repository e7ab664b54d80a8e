namespace SawEngine.Benchmarks.Peers;

/// <summary>What is cut from equal bars, each alike.</summary>
/// <param name="Bar">Place of the bar in the problem's list.</param>
/// <param name="Repeat">How many bars.</param>
/// <param name="Pieces">The pieces of one bar, each by its place in the problem's list.</param>
internal sealed record CutPattern(int Bar, int Repeat, IReadOnlyList<int> Pieces);
