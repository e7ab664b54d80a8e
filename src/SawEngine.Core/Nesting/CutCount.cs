using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Nesting;

/// <summary>
/// How many passes of the blade a layout takes: one before the first piece where anything is cut off there or its first face is mitered; between two pieces one
/// where they share it (their faces are parallel, one kerf apart), else two; one behind the last piece, but none where that ends square with the bar itself.
/// A pass whose kerf runs partly out of the bar counts.
/// </summary>
public static class CutCount
{
    /// <summary>The passes for one bar of a layout.</summary>
    public static int Of(BarLayout layout, Length kerf)
    {
        if (layout.Cuts.Count == 0)
            return 0;
        var (first, last) = (layout.Cuts[0], layout.Cuts[^1]);
        var count = Before(first.Start, !first.StartCut.IsSquare) + Behind(layout.Stock.Length - last.End, !last.EndCut.IsSquare);
        for (var i = 1; i < layout.Cuts.Count; i++)
            count += Between(layout.Cuts[i - 1], layout.Cuts[i], layout.Stock.Section, kerf);
        return count;
    }

    /// <summary>Passes before a first piece that starts at a distance from the bar's start.</summary>
    public static int Before(Length start, bool isMitered) => start > Length.Zero || isMitered ? 1 : 0;

    /// <summary>Passes behind a last piece that ends at a distance from the bar's end.</summary>
    public static int Behind(Length toEnd, bool isMitered) => toEnd > Length.Zero || isMitered ? 1 : 0;

    private static int Between(Cut before, Cut after, Section? section, Length kerf)
    {
        var (face, extent) = (before.EndCut, section is null ? Length.Zero : before.EndCut.ExtentAlongBar(section));
        return face == after.StartCut && after.Start - before.End <= face.KerfAlongBar(kerf) - extent ? 1 : 2;
    }
}
