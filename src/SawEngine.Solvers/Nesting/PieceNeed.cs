using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Solvers.Nesting;

/// <summary>What pieces ask of their stock: the line stands for all that ask alike; a heat that was chosen for a single-heat line binds as well, and its plant where so asked.</summary>
internal sealed record PieceNeed(OrderLine Line, string? ChosenHeat, bool FromOwnPlant)
{
    public bool IsServedBy(StockItem stock) =>
        StockMatch.Serves(Line, stock) && !(FromOwnPlant && StockMatch.IsForeign(Line, stock))
        && (ChosenHeat is null || string.Equals(ChosenHeat, stock.Heat, StringComparison.Ordinal));
}
