using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.Sections;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>A standard section.</summary>
public sealed record SectionItemJson
{
    /// <summary>Designation, unique.</summary>
    public required string Designation { get; init; }

    /// <summary>Other designations by which it is found.</summary>
    public required IReadOnlyList<string> OtherDesignations { get; init; }

    /// <summary>Kind of cross-section.</summary>
    [KnownValues(typeof(SectionShape))]
    public required string Shape { get; init; }

    /// <summary>The standard that fixes its dimensions; absent where none does.</summary>
    public string? Standard { get; init; }

    /// <summary>Its dimensions.</summary>
    public required SectionDimensionsJson Dimensions { get; init; }

    /// <summary>Area in mm2.</summary>
    public required SourcedValueJson AreaMm2 { get; init; }

    /// <summary>Area in in2; with inches only.</summary>
    public SourcedValueJson? AreaIn2 { get; init; }

    /// <summary>Mass of a meter in kg that the source prints, to compare with; absent where it prints none.</summary>
    public SourcedValueJson? PublishedMassKgPerM { get; init; }

    /// <summary>That mass as it is printed, with its unit.</summary>
    public string? PublishedMass { get; init; }

    /// <summary>What one should know about its values.</summary>
    public string? Note { get; init; }

    /// <summary>A section of the catalog.</summary>
    public static SectionItemJson Of(CatalogSection listed, LengthScale scale)
    {
        var area = new Sourced<decimal>(listed.Section.Area.SquareMillimeters, "computed from the dimensions", Confidence.Computed);
        return new()
        {
            Designation = listed.Section.Designation,
            OtherDesignations = listed.Aliases,
            Shape = WireEnum.Text(listed.Section.Shape),
            Standard = listed.Standard,
            Dimensions = SectionDimensionsJson.Of(listed, scale),
            AreaMm2 = SourcedValueJson.Of(area, mm2 => decimal.Round(mm2, 3, MidpointRounding.ToEven)),
            AreaIn2 = scale.Unit == LengthUnit.In ? SourcedValueJson.Of(area, CustomaryUnits.SquareInches) : null,
            PublishedMassKgPerM = listed.Published is { } published
                ? SourcedValueJson.Of(new Sourced<decimal>(published.MassPerMeter.Kilograms, listed.Section.Source, listed.Section.Confidence), mass => mass)
                : null,
            PublishedMass = listed.Published?.MassAsPrinted,
            Note = listed.Note,
        };
    }
}
