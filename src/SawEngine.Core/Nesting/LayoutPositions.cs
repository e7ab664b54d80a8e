using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting;

/// <summary>
/// Lays pieces along a bar under a saw's rules. Between two square faces lies one kerf; beside a miter two cuts are made, each with its own kerf
/// measured along the bar, and the wedge between them is at least the thinnest slice. The first face of a mitered piece is a cut of its own.
/// </summary>
public static class LayoutPositions
{
    /// <summary>Where the first piece may start: behind the trim of a raw end, and behind the cut of its own mitered face.</summary>
    public static Length Lead(StockItem stock, EndCut firstFace, CutRules rules)
    {
        var trim = CutOff(stock, rules);
        return firstFace.IsSquare ? trim : Length.Max(trim, firstFace.KerfAlongBar(rules.Kerf) + rules.ThinnestSlice);
    }

    /// <summary>What is cut off before anything else: the trim of a raw end, or all before the stretch that pieces are cut from.</summary>
    private static Length CutOff(StockItem stock, CutRules rules) => Length.Max(rules.TrimFor(stock.EndCondition), BarStretch.Of(stock).From);

    /// <summary>What is lost between two faces.</summary>
    public static Length Between(EndCut face, EndCut nextFace, CutRules rules) =>
        face.IsSquare && nextFace.IsSquare
            ? rules.Kerf
            : face.KerfAlongBar(rules.Kerf) + rules.ThinnestSlice + nextFace.KerfAlongBar(rules.Kerf);

    /// <summary>
    /// The farthest point at which the last piece may end. The remainder is at least the tail. Where the saw needs no tail the last kerf may run out of the
    /// bar's end, and a piece may end with the bar itself only where that end is sawn. No piece reaches into a zone (see <see cref="BarStretch"/>).
    /// </summary>
    public static Length LastEnd(StockItem stock, EndCut lastFace, CutRules rules)
    {
        var held = rules.Tail > Length.Zero || !lastFace.IsSquare
            ? stock.Length - lastFace.KerfAlongBar(rules.Kerf) - rules.Tail
            : stock.Length;
        var stretch = BarStretch.Of(stock);
        var before = stretch.HoldsKerf ? stretch.To - lastFace.KerfAlongBar(rules.Kerf) : stretch.To;
        return Length.Min(before, Length.Min(held, stock.Length - rules.TrimFor(stock.EndCondition)));
    }

    /// <summary>The layout of pieces in the given order on one bar; null where they do not fit.</summary>
    public static BarLayout? Lay(StockItem stock, IReadOnlyList<OrderLine> pieces, CutRules rules, LayoutCost cost)
    {
        if (pieces.Count == 0)
            return null;
        var position = Lead(stock, pieces[0].FirstEnd, rules);
        var lost = position - CutOff(stock, rules);
        var cuts = new List<Cut>(pieces.Count);
        for (var i = 0; i < pieces.Count; i++)
        {
            if (i > 0)
            {
                var gap = Between(pieces[i - 1].SecondEnd, pieces[i].FirstEnd, rules);
                position += gap;
                lost += gap;
            }
            var end = position + PieceGeometry.Of(pieces[i]).Overall;
            cuts.Add(new(pieces[i].Ref, position, end, pieces[i].FirstEnd, pieces[i].SecondEnd));
            position = end;
        }
        var lastFace = pieces[^1].SecondEnd;
        if (position > LastEnd(stock, lastFace, rules))
            return null;
        var lastKerf = Length.Min(lastFace.KerfAlongBar(rules.Kerf), stock.Length - position);
        return new()
        {
            Stock = stock,
            Cuts = cuts,
            Trim = CutOff(stock, rules),
            TransferCostMicros = LayoutCost.TransferMicros(stock, pieces),
            KerfTotal = lost + lastKerf,
            Remainder = cost.RemainderOf(stock, stock.Length - position - lastKerf),
        };
    }
}
