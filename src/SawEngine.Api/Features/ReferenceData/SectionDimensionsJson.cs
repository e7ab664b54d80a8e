using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>Dimensions of a section in the length unit of the answer, under the names that a section of a request has; all from one source.</summary>
public sealed record SectionDimensionsJson
{
    /// <summary>Height of the bounding box; of an angle its upright leg.</summary>
    [LengthRange]
    public decimal? Height { get; init; }

    /// <summary>Width of the bounding box; of an angle its lying leg; the side of a square.</summary>
    [LengthRange]
    public decimal? Width { get; init; }

    /// <summary>Outside diameter.</summary>
    [LengthRange]
    public decimal? Diameter { get; init; }

    /// <summary>Width of a hexagon across its flats.</summary>
    [LengthRange]
    public decimal? AcrossFlats { get; init; }

    /// <summary>Nominal wall thickness of a tube or pipe.</summary>
    [LengthRange]
    public decimal? Wall { get; init; }

    /// <summary>Thickness of an angle's legs.</summary>
    [LengthRange]
    public decimal? Thickness { get; init; }

    /// <summary>Thickness of the web.</summary>
    [LengthRange]
    public decimal? Web { get; init; }

    /// <summary>Thickness of the flange; of a tapered one at flangeAt.</summary>
    [LengthRange]
    public decimal? Flange { get; init; }

    /// <summary>Slope of the inner face of a channel's flanges, rise over run.</summary>
    [Range(0, 1)]
    public decimal? FlangeSlope { get; init; }

    /// <summary>Distance from the toe at which the thickness of a tapered flange is measured.</summary>
    [LengthRange]
    public decimal? FlangeAt { get; init; }

    /// <summary>Radius of the fillet between web and flange, or between an angle's legs.</summary>
    [LengthRange]
    public decimal? RootRadius { get; init; }

    /// <summary>Radius at the inner edge of a toe.</summary>
    [LengthRange]
    public decimal? ToeRadius { get; init; }

    /// <summary>Outer corner radius of a tube.</summary>
    [LengthRange]
    public decimal? OuterRadius { get; init; }

    /// <summary>Inner corner radius of a tube.</summary>
    [LengthRange]
    public decimal? InnerRadius { get; init; }

    /// <summary>Publication, table or practice that they come from.</summary>
    public required string Source { get; init; }

    /// <summary>How far they can be trusted.</summary>
    [KnownValues(typeof(Confidence))]
    public required string Confidence { get; init; }

    /// <summary>The dimensions from which a section of the catalog is made.</summary>
    public static SectionDimensionsJson Of(CatalogSection listed, LengthScale scale)
    {
        var dimensions = listed.Dimensions;
        return new()
        {
            Height = Written(dimensions.Height),
            Width = Written(dimensions.Width),
            Diameter = Written(dimensions.Diameter),
            AcrossFlats = Written(dimensions.AcrossFlats),
            Wall = Written(dimensions.Wall),
            Thickness = Written(dimensions.Thickness),
            Web = Written(dimensions.Web),
            Flange = Written(dimensions.Flange),
            FlangeSlope = dimensions.FlangeSlope,
            FlangeAt = Written(dimensions.FlangeAt),
            RootRadius = Written(dimensions.RootRadius),
            ToeRadius = Written(dimensions.ToeRadius),
            OuterRadius = Written(dimensions.OuterRadius),
            InnerRadius = Written(dimensions.InnerRadius),
            Source = listed.Section.Source,
            Confidence = WireEnum.Text(listed.Section.Confidence),
        };

        decimal? Written(Length? length) => length is { } given ? scale.WriteRounded(given) : null;
    }
}
