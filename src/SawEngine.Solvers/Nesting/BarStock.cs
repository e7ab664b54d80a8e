using SawEngine.Core.Stock;

namespace SawEngine.Solvers.Nesting;

/// <summary>A stock item in the search.</summary>
/// <param name="Item">The stock item.</param>
/// <param name="Class">Index of the class of stock that serves alike and has ends alike.</param>
/// <param name="Available">Bars that can be used; never more than there are pieces.</param>
/// <param name="Usable">Largest sum of square pieces, each with its kerf, in nanometers.</param>
internal sealed record BarStock(StockItem Item, int Class, int Available, long Usable)
{
    /// <summary>Equal for bars that are one to the search.</summary>
    public (int, long, long, long, long?) Kind => (Class, Length, Item.CostMicros, Item.PullCostMicros, Item.ForeignPlantCostMicros);

    public long Length => Item.Length.Nanometers;
}
