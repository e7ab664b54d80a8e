namespace SawEngine.Benchmarks.Quality;

/// <summary>Equal pieces of a problem of lengths alone.</summary>
/// <param name="Length">Length in nanometers.</param>
/// <param name="Demand">How many.</param>
internal sealed record WantedPiece(long Length, int Demand);
