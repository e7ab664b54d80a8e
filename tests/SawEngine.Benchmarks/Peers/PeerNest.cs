namespace SawEngine.Benchmarks.Peers;

/// <summary>The nest of a peer.</summary>
/// <param name="Patterns">What is cut.</param>
/// <param name="BoundMicros">The bound on the cost that the engine proved; null of the others, whose bounds are in floating point.</param>
internal sealed record PeerNest(IReadOnlyList<CutPattern> Patterns, long? BoundMicros);
