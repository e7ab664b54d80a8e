using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>
/// A cross-section as it lies in the vise: height along the blade's travel, width along the blade.
/// Two sections are the same where their designations are.
/// </summary>
public abstract class Section : IEquatable<Section>
{
    /// <summary>The designation by which the catalog or the request lists it, unique.</summary>
    public required string Designation { get; init; }

    /// <summary>Kind of cross-section.</summary>
    public required SectionShape Shape { get; init; }

    /// <summary>Where its dimensions come from.</summary>
    public required string Source { get; init; }

    /// <summary>How far its dimensions can be trusted.</summary>
    public required Confidence Confidence { get; init; }

    /// <summary>Height of the bounding box.</summary>
    public abstract Length Height { get; }

    /// <summary>Width of the bounding box.</summary>
    public abstract Length Width { get; }

    /// <summary>Cross-section area, rounded to 1e-6 mm2, half to even.</summary>
    public abstract Area Area { get; }

    /// <summary>The section of these dimensions as a caller stated them, or null with every fault found.</summary>
    public static Section? Create(SectionDimensions dimensions, out IReadOnlyList<SectionFault> faults) => dimensions.IsByContactWidths
        ? ProfileSection.Create(dimensions, out faults)
        : OutlineSection.Create(dimensions, out faults);

    /// <summary>Mass of one meter of bar at a density.</summary>
    public Mass MassPerMeter(Density density) => density.MassOf(Area, Length.FromMillimeters(1000m));

    /// <summary>Whether the saw's capacity for rounds counts.</summary>
    public bool IsRound => Shape is SectionShape.Round or SectionShape.RoundTube or SectionShape.Pipe;

    /// <summary>Whether its outline is known, so that what can be told of its symmetry is known, too.</summary>
    internal virtual bool HasOutline => true;

    /// <summary>Whether it is known how it is cut turned a quarter.</summary>
    internal virtual bool CanTurn => true;

    /// <summary>Whether it is solid, so that one run of material spans the cut.</summary>
    public bool IsSolid => Shape is SectionShape.Round or SectionShape.Square or SectionShape.Hexagon or SectionShape.Flat;

    /// <summary>Runs of material that the blade is in at a depth below the top, as (start, end) in mm from the left, ascending and apart. Empty outside the section; at a breakpoint the side with more material.</summary>
    internal abstract IReadOnlyList<(double Start, double End)> RunsAt(double depthMillimeters);

    /// <summary>Depths in mm, ascending, 0 and the height included, between which the contact width is smooth.</summary>
    internal abstract IReadOnlyList<double> Breakpoints { get; }

    /// <summary>All material that the blade is in at a depth below the top, in mm.</summary>
    internal double ContactWidthAt(double depthMillimeters)
    {
        var width = 0d;
        foreach (var (start, end) in RunsAt(depthMillimeters))
            width += end - start;
        return width;
    }

    /// <summary>The section turned a quarter, so that height and width change places; only where it can be turned.</summary>
    internal abstract Section Turned();

    /// <summary>
    /// The section as a blade meets it whose right-hand end is lower by an angle. Height is the blade's way square to itself, H cos c + W sin c of what has square
    /// corners. Null where the outline is not known.
    /// </summary>
    internal virtual Section? Canted(Angle cant) => null;

    /// <inheritdoc/>
    public bool Equals(Section? other) => other is not null && string.Equals(Designation, other.Designation, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Section);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Designation);
}
