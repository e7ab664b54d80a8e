using SawEngine.Core.Stock;

namespace SawEngine.Benchmarks.Quality;

/// <summary>Equal bars of a problem of lengths alone.</summary>
/// <param name="Kind">Where they come from.</param>
/// <param name="Length">Length in nanometers.</param>
/// <param name="Available">How many; null for as many as are needed.</param>
/// <param name="CostMicros">Cost of one in millionths of the objective's unit.</param>
internal sealed record OfferedBar(StockKind Kind, long Length, int? Available, long CostMicros);
