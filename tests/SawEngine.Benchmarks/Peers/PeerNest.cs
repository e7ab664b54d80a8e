namespace SawEngine.Benchmarks.Peers;

/// <summary>The nest of a peer.</summary>
/// <param name="Patterns">What is cut.</param>
/// <param name="BoundMicros">What it takes for a bound on the cost; null where it states none.</param>
internal sealed record PeerNest(IReadOnlyList<CutPattern> Patterns, long? BoundMicros);
