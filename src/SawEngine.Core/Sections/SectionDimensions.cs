using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>
/// The dimensions of a section, flat for all shapes. Each shape has its own members, optional ones in brackets; a member that is missing,
/// or given and not used by the shape, is a <see cref="SectionFault"/>.
/// <list type="bullet">
/// <item><description>round: diameter</description></item>
/// <item><description>square: width</description></item>
/// <item><description>hexagon: acrossFlats</description></item>
/// <item><description>flat: height, width</description></item>
/// <item><description>roundTube, pipe: diameter, wall</description></item>
/// <item><description>squareTube: width, wall, [outerRadius, innerRadius]</description></item>
/// <item><description>rectangleTube: height, width, wall, [outerRadius, innerRadius]</description></item>
/// <item><description>angle: height and width (the legs), thickness, [rootRadius, toeRadius]</description></item>
/// <item><description>channel: height, width, web, flange, [flangeSlope, flangeAt, rootRadius, toeRadius]</description></item>
/// <item><description>iBeam, tee: height, width, web, flange, [rootRadius]</description></item>
/// <item><description>custom: outline; or width, contactWidths, [areaMm2, contactWidthsTurned]</description></item>
/// </list>
/// Every given dimension lies between 0.001 mm and 10 m; radii may be zero.
/// </summary>
public sealed record SectionDimensions
{
    /// <summary>The designation by which the section is known, unique in its list.</summary>
    public required string Designation { get; init; }

    /// <summary>Kind of cross-section.</summary>
    public required SectionShape Shape { get; init; }

    /// <summary>Height of the bounding box; of an angle its upright leg.</summary>
    public Length? Height { get; init; }

    /// <summary>Width of the bounding box; of an angle its lying leg; the side of a square.</summary>
    public Length? Width { get; init; }

    /// <summary>Outside diameter.</summary>
    public Length? Diameter { get; init; }

    /// <summary>Width of a hexagon across its flats. It lies on a flat, so this is its height.</summary>
    public Length? AcrossFlats { get; init; }

    /// <summary>Wall thickness of a tube or pipe: the nominal one, by which it is weighed and cut.</summary>
    public Length? Wall { get; init; }

    /// <summary>Thickness of an angle's legs.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Thickness of the web.</summary>
    public Length? Web { get; init; }

    /// <summary>Thickness of the flange; of a tapered one at <see cref="FlangeAt"/>.</summary>
    public Length? Flange { get; init; }

    /// <summary>Slope of the inner face of a channel's flanges, rise over run: 0.08 for 8 %. Absent: parallel flanges.</summary>
    public decimal? FlangeSlope { get; init; }

    /// <summary>Distance from the toe at which the thickness of a tapered flange is measured. Absent: half the width, as for European channels up to 300 mm high.</summary>
    public Length? FlangeAt { get; init; }

    /// <summary>Radius of the fillet between web and flange, or between an angle's legs. Absent: 0.</summary>
    public Length? RootRadius { get; init; }

    /// <summary>Radius at the inner edge of a toe. Absent: 0.</summary>
    public Length? ToeRadius { get; init; }

    /// <summary>Outer corner radius of a tube. Absent: the inner radius plus the wall, or twice the wall (at most half the smaller side) where both are absent: common practice.</summary>
    public Length? OuterRadius { get; init; }

    /// <summary>Inner corner radius of a tube. Absent: the outer radius less the wall: common practice.</summary>
    public Length? InnerRadius { get; init; }

    /// <summary>Corners of a custom section in order, either way round, as drawn: x to the right, y upward, origin anywhere. At least 3, at most 500.</summary>
    public IReadOnlyList<OutlinePoint>? Outline { get; init; }

    /// <summary>
    /// Contact widths of a custom section whose outline is not stated, from the top, at depth 0, to the bottom, whose depth is its height. At least 2, at most 500.
    /// None is more than the width, and their integral is the area within 1 %.
    /// </summary>
    public IReadOnlyList<ContactWidth>? ContactWidths { get; init; }

    /// <summary>The same for the section turned a quarter: the last depth is the width, and none is more than the height. Absent: it lies only as it comes.</summary>
    public IReadOnlyList<ContactWidth>? ContactWidthsTurned { get; init; }

    /// <summary>Area in mm2 of a custom section that is stated by its contact widths. Absent: their integral.</summary>
    public decimal? AreaMm2 { get; init; }

    /// <summary>Whether it is a custom section by its contact widths.</summary>
    internal bool IsByContactWidths => Shape == SectionShape.Custom && ContactWidths is not null;

    /// <summary>Whether a dimension is given, by its name as written in JSON (camelCase), of a list also an item of it.</summary>
    public bool Gives(string member) => ShapeMembers.Given(this).Contains((member.Split('[')[0], true));
}
