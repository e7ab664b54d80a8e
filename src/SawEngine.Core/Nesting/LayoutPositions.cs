using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting;

/// <summary>
/// Lays pieces along a bar under a saw's rules. One cut serves two facing ends that are parallel, square or mitered alike. Between other facing ends two cuts are
/// made, each with its own kerf measured along the bar, and the wedge between them is nowhere thinner, along the bar, than the thinnest slice.
/// The first face of a mitered piece is a cut of its own.
/// </summary>
public static class LayoutPositions
{
    /// <summary>Where the first piece may start: behind the trim of a raw end, and behind the cut of its own mitered face.</summary>
    public static Length Lead(StockItem stock, EndCut firstFace, CutRules rules) => Length.Max(CutOff(stock, rules), LeadOf(firstFace, rules));

    /// <summary>What a first face takes for its own cut: nothing where it is square.</summary>
    public static Length LeadOf(EndCut firstFace, CutRules rules) =>
        firstFace.IsSquare ? Length.Zero : firstFace.KerfAlongBar(rules.Kerf) + rules.ThinnestSlice;

    /// <summary>What is cut off before anything else: the trim of a raw end, or all before the stretch that pieces are cut from.</summary>
    public static Length CutOff(StockItem stock, CutRules rules) => Length.Max(rules.TrimFor(stock.EndCondition), BarStretch.Of(stock).From);

    /// <summary>
    /// From the last point of a face to the first point of the next piece's face, along the bar: the kerf where they are parallel, else both kerfs and the
    /// thinnest slice, less what the faces overlap. Negative where they overlap by more. Never less than the mean of the same between each face and
    /// its own like. Faces on a bar of no named section are not taken to overlap.
    /// </summary>
    public static Length Between(EndCut face, EndCut nextFace, Section? section, CutRules rules) => face.IsSquare && nextFace.IsSquare
        ? rules.Kerf
        : Between(FaceOnBar.Of(face, section, rules), FaceOnBar.Of(nextFace, section, rules), rules);

    /// <summary>The same for faces through one section.</summary>
    public static Length Between(FaceOnBar face, FaceOnBar next, CutRules rules) =>
        (face.Cut == next.Cut ? face.Kerf : face.Kerf + rules.ThinnestSlice + next.Kerf) - face.OverlapAlongBar(next);

    /// <summary>
    /// The farthest point at which the last piece may end. The remainder is at least the tail, on its short side: a mitered last face reaches back from
    /// this point. Where the saw needs no tail the last kerf may run out of the bar's end, and a piece may end with the bar itself only where that end is sawn. No piece reaches
    /// into a zone (see <see cref="BarStretch"/>).
    /// </summary>
    public static Length LastEnd(StockItem stock, EndCut lastFace, CutRules rules)
    {
        var end = Length.Min(LastPoint(stock, rules), stock.Length - HeldBehind(lastFace, rules));
        return LastKerf(stock) is { } kerf ? Length.Min(end, kerf - lastFace.KerfAlongBar(rules.Kerf)) : end;
    }

    /// <summary>The farthest point that any piece may reach: before the trim of a raw end, and before a zone.</summary>
    public static Length LastPoint(StockItem stock, CutRules rules)
    {
        var stretch = BarStretch.Of(stock);
        return Length.Min(stretch.HoldsKerf ? stock.Length : stretch.To, stock.Length - rules.TrimFor(stock.EndCondition));
    }

    /// <summary>The farthest point that the last kerf may reach; null where it may run out of the bar, or into what lies behind.</summary>
    public static Length? LastKerf(StockItem stock) => BarStretch.Of(stock) is { HoldsKerf: true } stretch ? stretch.To : null;

    /// <summary>The last kerf and the tail, where the saw needs one or the face is mitered.</summary>
    public static Length HeldBehind(EndCut lastFace, CutRules rules) =>
        rules.Tail > Length.Zero || !lastFace.IsSquare ? lastFace.KerfAlongBar(rules.Kerf) + rules.Tail : Length.Zero;

    /// <summary>The layout of pieces as ordered, in the given order on one bar; null where they do not fit.</summary>
    public static BarLayout? Lay(StockItem stock, IReadOnlyList<OrderLine> lines, CutRules rules, LayoutCost cost) =>
        Lay(stock, [.. lines.Select(line => new PlacedPiece(line))], rules, cost);

    /// <summary>The layout of pieces in their turns, in the given order on one bar; null where they do not fit.</summary>
    public static BarLayout? Lay(StockItem stock, IReadOnlyList<PlacedPiece> pieces, CutRules rules, LayoutCost cost)
    {
        if (pieces.Count == 0)
            return null;
        var cuts = new List<Cut>(pieces.Count);
        var booked = CutOff(stock, rules);
        foreach (var piece in pieces)
        {
            cuts.Add(Next(stock, cuts.Count == 0 ? null : cuts[^1], piece, rules));
            booked += cuts[^1].Centerline;
        }
        var last = cuts[^1];
        if (last.End > LastEnd(stock, last.EndCut, rules))
            return null;
        var remainder = stock.Length - last.End - Length.Min(last.EndCut.KerfAlongBar(rules.Kerf), stock.Length - last.End);
        return new()
        {
            Stock = stock,
            Cuts = cuts,
            Trim = CutOff(stock, rules),
            TransferCostMicros = LayoutCost.TransferMicros(stock, pieces.Select(piece => piece.Line)),
            KerfTotal = stock.Length - booked - remainder,
            Remainder = cost.RemainderOf(stock, remainder),
        };
    }

    private static Cut Next(StockItem stock, Cut? before, PlacedPiece piece, CutRules rules)
    {
        var faces = PieceFaces.Of(piece.Line, piece.Turn);
        var start = before is null
            ? Lead(stock, faces.First, rules)
            : before.End + Between(before.EndCut, faces.First, stock.Section, rules);
        var geometry = PieceGeometry.Of(piece.Line);
        return new(piece.Line.Ref, start, start + geometry.Overall, faces.First, faces.Second, piece.Turn, geometry.Centerline);
    }
}
