using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting;

/// <summary>Which stock may serve which order line: section, grade, owner, plant, reservation, inspection document and heat.</summary>
public static class StockMatch
{
    /// <summary>Whether the section is the one ordered, and the grade too or a substitute for it.</summary>
    public static bool IsOfMaterial(OrderLine line, StockItem stock) =>
        Equals(line.Section, stock.Section) && (Equals(line.Grade, stock.Grade) || IsSubstitute(line, stock));

    /// <summary>Whether the stock is of another grade than ordered, which the line allows in its place.</summary>
    public static bool IsSubstitute(OrderLine line, StockItem stock) =>
        stock.Grade is { } grade && !Equals(line.Grade, grade) && line.Substitutes.Contains(grade);

    /// <summary>Whether the inspection document offered is at least as high as the one ordered.</summary>
    public static bool Suffices(Certificate ordered, Certificate offered) => ordered switch
    {
        Certificate.None => true,
        Certificate.MillTestReport => offered == Certificate.MillTestReport,
        _ => offered != Certificate.MillTestReport && offered >= ordered,
    };

    /// <summary>Whether the stock's heat may serve the line: what lost its heat serves neither certified work nor lines that care for the heat.</summary>
    public static bool IsOfHeat(OrderLine line, StockItem stock) => line.HeatRule switch
    {
        HeatRule.Named => stock.Heat is not null && string.Equals(stock.Heat, line.Heat, StringComparison.Ordinal),
        HeatRule.Single => stock.Heat is not null,
        _ => stock.Heat is not null || line.Certificate == Certificate.None,
    };

    /// <summary>Whether the stock is the shop's own, or that of the line's customer.</summary>
    public static bool IsOfOwner(OrderLine line, StockItem stock) => stock.Owner is null || string.Equals(stock.Owner, line.Owner, StringComparison.Ordinal);

    /// <summary>Whether the stock lies in the line's plant, as far as both are stated, or may be brought there.</summary>
    public static bool IsInReach(OrderLine line, StockItem stock) => stock.ForeignPlantCostMicros is not null || !IsForeign(line, stock);

    /// <summary>Whether the stock lies in another plant than the line's.</summary>
    public static bool IsForeign(OrderLine line, StockItem stock) =>
        stock.Plant is not null && line.Plant is not null && !string.Equals(stock.Plant, line.Plant, StringComparison.Ordinal);

    /// <summary>Whether the stock is not reserved, or reserved for the line.</summary>
    public static bool IsFree(OrderLine line, StockItem stock) => stock.ReservedFor is null || stock.ReservedFor.Contains(line.Ref.ReservationId, StringComparer.Ordinal);

    /// <summary>Whether a bar of the stock may give a piece of the line.</summary>
    public static bool Serves(OrderLine line, StockItem stock) =>
        IsOfMaterial(line, stock) && IsOfOwner(line, stock) && IsInReach(line, stock) && IsFree(line, stock)
        && Suffices(line.Certificate, stock.Certificate) && IsOfHeat(line, stock);
}
