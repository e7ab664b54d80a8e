using SawEngine.Core.Quantities;

namespace SawEngine.Core.Saws;

/// <summary>A usual blade, as the catalog lists it.</summary>
/// <param name="Blade">The blade; its id is its designation.</param>
/// <param name="UpToCapacity">Largest capacity of saws on which its band is usual; null for the largest saws.</param>
public sealed record CatalogBlade(Blade Blade, Length? UpToCapacity);
