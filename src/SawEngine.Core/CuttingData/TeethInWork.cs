namespace SawEngine.Core.CuttingData;

/// <summary>Teeth that are in the work at once, to 0.001.</summary>
/// <param name="Min">In the shortest run of material, at the blade's coarsest pitch.</param>
/// <param name="Mean">In the mean width (area over travel), at the mean pitch.</param>
/// <param name="Max">In the longest run of material, at the finest pitch.</param>
public sealed record TeethInWork(decimal Min, decimal Mean, decimal Max);
