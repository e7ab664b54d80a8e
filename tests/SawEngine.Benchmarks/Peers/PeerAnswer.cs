namespace SawEngine.Benchmarks.Peers;

/// <summary>What a peer answers.</summary>
/// <param name="Nest">Its nest; null where it found none.</param>
/// <param name="Seconds">Time to build its model and to solve it, without the start of the process.</param>
/// <param name="Note">Why there is no nest.</param>
internal sealed record PeerAnswer(PeerNest? Nest, double Seconds, string? Note);
