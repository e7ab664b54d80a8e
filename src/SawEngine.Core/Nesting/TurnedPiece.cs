using SawEngine.Core.Orders;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Nesting;

/// <summary>The verifier's own turns: each is a rotation by half a turn about one of three axes, written as the signs it gives to width, height and length.</summary>
internal readonly record struct TurnedPiece(int Width, int Height, int Length)
{
    private const double Noise = 1e-9;

    /// <summary>The rotation; null for a turn that is none.</summary>
    public static TurnedPiece? Of(PieceTurn turn) => turn switch
    {
        PieceTurn.None => new(1, 1, 1),
        PieceTurn.EndForEnd => new(-1, 1, -1),
        PieceTurn.Over => new(-1, -1, 1),
        PieceTurn.EndForEndOver => new(1, -1, -1),
        _ => null,
    };

    /// <summary>Whether the section lies as before; of one that is not known nothing can be said.</summary>
    public bool Keeps(Section? section) =>
        (Width > 0 && Height > 0) || (section is not null && SectionMirror.LeavesAsBefore(section, Width < 0, Height < 0));

    /// <summary>Whether the faces of a line, rotated, are those of a cut.</summary>
    public bool Gives(OrderLine line, Cut cut)
    {
        var (first, second) = Length > 0 ? (line.FirstEnd, line.SecondEnd) : (line.SecondEnd, line.FirstEnd);
        return Gives(first, cut.StartCut) && Gives(second, cut.EndCut);
    }

    /// <summary>
    /// A point of the turned face at (x, y) was at (Width × x, Height × y) of the ordered one. Two points beside the face's center, one in each plane, hold it.
    /// </summary>
    private bool Gives(EndCut ordered, EndCut turned) =>
        Math.Abs(Length * FaceTrigonometry.OffsetAt(ordered, Width, 0) - FaceTrigonometry.OffsetAt(turned, 1, 0)) < Noise
        && Math.Abs(Length * FaceTrigonometry.OffsetAt(ordered, 0, Height) - FaceTrigonometry.OffsetAt(turned, 0, 1)) < Noise;
}
