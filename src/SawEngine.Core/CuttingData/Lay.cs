using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.CuttingData;

/// <summary>How a bar lies in the vise: by how many quarters it is turned clockwise, looking along the bar from first to second end.</summary>
/// <param name="QuarterTurns">0 to 3.</param>
public readonly record struct Lay(int QuarterTurns)
{
    /// <summary>All lays, the bar as it comes first; the default value.</summary>
    public static IReadOnlyList<Lay> All { get; } = [new(0), new(1), new(2), new(3)];

    /// <summary>The lays in which a section can be: all, but for one whose cut is known only as it comes, which lies so or half turned. All where it is not known.</summary>
    public static IReadOnlyList<Lay> AllOf(Section? section) => section is null or { CanTurn: true } ? All : HalfTurns;

    private static IReadOnlyList<Lay> HalfTurns { get; } = [new(0), new(2)];

    /// <summary>The section as it lies. Half a turn leaves height, width and cut time as they are.</summary>
    internal Section Of(Section section) => QuarterTurns % 2 == 0 ? section : section.Turned();

    /// <summary>A cut as it lies: a quarter clockwise brings the top to the right and the right to the bottom.</summary>
    public EndCut Of(EndCut cut) => QuarterTurns switch
    {
        1 => new(Reversed(cut.WidthAngle), cut.HeightAngle),
        2 => new(Reversed(cut.HeightAngle), Reversed(cut.WidthAngle)),
        3 => new(cut.WidthAngle, Reversed(cut.HeightAngle)),
        _ => cut,
    };

    private static Angle Reversed(Angle angle) => new(-angle.Millidegrees);
}
