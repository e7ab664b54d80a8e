using SawEngine.Core.Quantities;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting;

/// <summary>
/// The one stretch of a bar that pieces are cut from. A bar with zones is used up to its first zone, or behind its last one where that is longer; what lies
/// before it is then cut off with the trim. A bar with a reserved zone is used up to its first zone only, so that the reserved one stays in the remainder.
/// </summary>
/// <param name="From">Where the first piece may start.</param>
/// <param name="To">Where the last piece ends at the latest.</param>
/// <param name="HoldsKerf">Whether the last kerf has to lie in it too, since what follows is reserved.</param>
public readonly record struct BarStretch(Length From, Length To, bool HoldsKerf)
{
    /// <summary>The stretch of a bar.</summary>
    public static BarStretch Of(StockItem stock)
    {
        if (stock.Zones.Count == 0)
            return new(Length.Zero, stock.Length, false);
        var (first, last) = (stock.Zones[0], stock.Zones[^1]);
        return stock.HasReservedZone || first.From >= stock.Length - last.To
            ? new(Length.Zero, first.From, first.Kind == ZoneKind.Reserved)
            : new(last.To, stock.Length, false);
    }
}
