using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Sections;

namespace SawEngine.Api.Features.Stock;

/// <summary>A section of the caller's own, flat for all shapes; each shape has its own members. round: diameter. square: width. hexagon: acrossFlats. flat: height, width.
/// roundTube, pipe: diameter, wall. squareTube: width, wall, [outerRadius, innerRadius]. rectangleTube: height, width, wall, [outerRadius, innerRadius].
/// angle: height, width, thickness, [rootRadius, toeRadius]. channel: height, width, web, flange, [flangeSlope, flangeAt, rootRadius, toeRadius].
/// iBeam, tee: height, width, web, flange, [rootRadius]. custom: outline; or width, contactWidths, [areaMm2, contactWidthsTurned]. Dimensions lie between 0.001 mm and 10 m; radii may be 0.</summary>
public sealed record SectionJson
{
    /// <summary>Id of the section, unique. It comes before a catalog designation of the same name.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string SectionId { get; init; }

    /// <summary>Kind of cross-section.</summary>
    public required SectionShape Shape { get; init; }

    /// <summary>Height of the bounding box; of an angle its upright leg, in the length unit of the request.</summary>
    [LengthRange]
    public decimal? Height { get; init; }

    /// <summary>Width of the bounding box; of an angle its lying leg; the side of a square, in the length unit of the request.</summary>
    [LengthRange]
    public decimal? Width { get; init; }

    /// <summary>Outside diameter, in the length unit of the request.</summary>
    [LengthRange]
    public decimal? Diameter { get; init; }

    /// <summary>Width of a hexagon across its flats, in the length unit of the request.</summary>
    [LengthRange]
    public decimal? AcrossFlats { get; init; }

    /// <summary>Nominal wall thickness of a tube or pipe, in the length unit of the request.</summary>
    [LengthRange]
    public decimal? Wall { get; init; }

    /// <summary>Thickness of an angle's legs, in the length unit of the request.</summary>
    [LengthRange]
    public decimal? Thickness { get; init; }

    /// <summary>Thickness of the web, in the length unit of the request.</summary>
    [LengthRange]
    public decimal? Web { get; init; }

    /// <summary>Thickness of the flange; of a tapered one at flangeAt, in the length unit of the request.</summary>
    [LengthRange]
    public decimal? Flange { get; init; }

    /// <summary>Slope of the inner face of a channel's flanges, rise over run: 0.08 for 8 %; parallel where absent.</summary>
    [Range(0, 1)]
    public decimal? FlangeSlope { get; init; }

    /// <summary>Distance from the toe at which the thickness of a tapered flange is measured; half the width where absent, in the length unit of the request.</summary>
    [LengthRange]
    public decimal? FlangeAt { get; init; }

    /// <summary>Radius of the fillet between web and flange, or between an angle's legs; 0 where absent, in the length unit of the request.</summary>
    [LengthRange]
    public decimal? RootRadius { get; init; }

    /// <summary>Radius at the inner edge of a toe; 0 where absent, in the length unit of the request.</summary>
    [LengthRange]
    public decimal? ToeRadius { get; init; }

    /// <summary>Outer corner radius of a tube; from the wall where absent, in the length unit of the request.</summary>
    [LengthRange]
    public decimal? OuterRadius { get; init; }

    /// <summary>Inner corner radius of a tube; from the wall where absent, in the length unit of the request.</summary>
    [LengthRange]
    public decimal? InnerRadius { get; init; }

    /// <summary>Corners of a custom section in order, either way round.</summary>
    [MinLength(3), MaxLength(500)]
    public IReadOnlyList<OutlinePointJson>? Outline { get; init; }

    /// <summary>A custom section without an outline: how much material the blade is in from the top, at depth 0, to the bottom, whose depth is the height. None is
    /// more than the width, and they add up to the area within 1 %. Nothing is taken for granted of its symmetry: it is cut singly, and mitered pieces are not turned.</summary>
    [MinLength(2), MaxLength(500)]
    public IReadOnlyList<ContactWidthJson>? ContactWidths { get; init; }

    /// <summary>The same for the section turned a quarter: the last depth is the width. Where absent, it lies in the saw only as it comes.</summary>
    [MinLength(2), MaxLength(500)]
    public IReadOnlyList<ContactWidthJson>? ContactWidthsTurned { get; init; }

    /// <summary>Area in mm2 of a section by its contact widths, by which it is weighed; what they add up to where absent.</summary>
    [Range(0.000001, 100000000)]
    public decimal? AreaMm2 { get; init; }
}
