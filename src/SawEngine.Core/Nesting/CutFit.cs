using SawEngine.Core.CuttingData;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting;

/// <summary>Which pieces and bars may be cut under given rules. A bar lies one way for all its cuts.</summary>
public static class CutFit
{
    /// <summary>The lays in which a saw under the rules makes both faces of a line's pieces; all where no saw is given.</summary>
    public static IReadOnlyList<Lay> LaysOf(OrderLine line, CutRules rules) => LaysOf(line, PieceTurn.None, rules);

    /// <summary>The same for pieces that are turned. A turn never leaves a line without lays: it changes hands as another lay does.</summary>
    public static IReadOnlyList<Lay> LaysOf(OrderLine line, PieceTurn turn, CutRules rules)
    {
        if (rules.Capacity is not { } capacity || line.Section is not { } section)
            return Lay.All;
        var (_, first, second) = PieceFaces.Of(line, turn);
        return [.. Lay.AllOf(section).Where(lay => Reaches(lay, section, [EndCut.Square, first, second], capacity, rules.MiterRange))];
    }

    /// <summary>Why a line's pieces cannot be cut under the rules: a code of <see cref="UnplacedReason"/>; null where they can.</summary>
    public static string? ReasonAgainst(OrderLine line, CutRules rules)
    {
        if (LaysOf(line, rules).Count == 0)
        {
            return Lay.AllOf(line.Section).Any(lay => Reaches(lay, line.Section!, [EndCut.Square], rules.Capacity!, rules.MiterRange))
                ? UnplacedReason.NoSawCutsMiter
                : UnplacedReason.NoSawHoldsSection;
        }
        var geometry = PieceGeometry.Of(line);
        if (geometry.ShortSide < rules.ShortestPiece || geometry.ShortSide <= Length.Zero)
            return UnplacedReason.PieceTooShort;
        return geometry.Overall > rules.LongestPiece ? UnplacedReason.PieceTooLong : null;
    }

    /// <summary>Whether a bar is light enough; a bar of unknown section or grade is not weighed.</summary>
    public static bool Carries(StockItem stock, CutRules rules) =>
        rules.LoadLimit is not { } limit || stock.Section is null || stock.Grade is null
        || stock.Grade.Density.Value.MassOf(stock.Section.Area, stock.Length) <= limit;

    private static bool Reaches(Lay lay, Section section, EndCut[] cuts, SawCapacity capacity, MiterRange? range) =>
        Array.TrueForAll(cuts, cut => SawFit.Obstacle(capacity, range, lay.Of(section), lay.Of(cut)) is null);
}
