using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Planning;

/// <summary>One pass of the blade through a bar.</summary>
/// <param name="Piece">The piece whose face it makes; null for a trim cut.</param>
/// <param name="Face">The face that it makes, square for a trim cut.</param>
/// <param name="Index">How far the bar moves before it.</param>
/// <param name="FreesPiece">Whether a piece falls.</param>
public sealed record SawCut(PieceRef? Piece, EndCut Face, Length Index, bool FreesPiece)
{
    /// <summary>
    /// The passes for one bar in order, where they cross the bar's centerline. A raw start takes a trim cut, unless the first face is mitered and cuts it off
    /// itself. Two parallel faces share one pass; of others each takes its own. A last piece that ends with the bar takes none.
    /// </summary>
    public static IReadOnlyList<SawCut> Of(BarLayout layout)
    {
        var passes = new List<SawCut>(layout.Cuts.Count + 1);
        var position = Length.Zero;
        if (layout.Trim > Length.Zero && layout.Cuts[0].StartCut.IsSquare)
            Pass(null, EndCut.Square, layout.Trim, freesPiece: false);
        for (var i = 0; i < layout.Cuts.Count; i++)
        {
            var cut = layout.Cuts[i];
            if (cut.StartCut != (i == 0 ? EndCut.Square : layout.Cuts[i - 1].EndCut))
                Pass(cut.Piece, cut.StartCut, cut.Start + HalfExtent(cut.StartCut), freesPiece: false);
            if (cut.End < layout.Stock.Length || !cut.EndCut.IsSquare)
                Pass(cut.Piece, cut.EndCut, cut.End - HalfExtent(cut.EndCut), freesPiece: true);
        }
        return passes;

        Length HalfExtent(EndCut face) => layout.Stock.Section is { } section ? new(face.ExtentAlongBar(section).Nanometers / 2) : Length.Zero;

        void Pass(PieceRef? piece, EndCut face, Length at, bool freesPiece)
        {
            passes.Add(new(piece, face, at - position, freesPiece));
            position = at;
        }
    }
}
