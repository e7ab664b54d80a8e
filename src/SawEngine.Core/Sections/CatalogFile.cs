using System.Text.Json.Serialization;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>The catalog as it is written in JSON.</summary>
internal sealed record CatalogFile
{
    public required string DataVersion { get; init; }

    public required IReadOnlyDictionary<string, string> Sources { get; init; }

    public required IReadOnlyList<Row> Sections { get; init; }

    /// <summary>One section. A row that makes none is a fault of the file, thrown as <see cref="InvalidDataException"/>.</summary>
    internal sealed record Row
    {
        public required string Designation { get; init; }

        public IReadOnlyList<string>? Aliases { get; init; }

        public required SectionShape Shape { get; init; }

        public string? Standard { get; init; }

        public required CatalogUnit Unit { get; init; }

        public required RowDimensions Dimensions { get; init; }

        public required RowPublished Published { get; init; }

        public required string Source { get; init; }

        public required Confidence Confidence { get; init; }

        public string? Note { get; init; }

        public CatalogSection ToSection(IReadOnlyDictionary<string, string> sources)
        {
            var dimensions = Dimensions.In(Unit) with { Designation = Designation, Shape = Shape };
            var section = OutlineSection.Create(dimensions, sources[Source], Confidence, out var faults)
                ?? throw new InvalidDataException($"{Designation}: {faults[0].Detail}");
            return new(section, dimensions, Standard, Aliases ?? [], Published.In(Unit), Note);
        }
    }

    /// <summary>Dimensions in the unit of the row. A value that is no whole number of nanometers throws; none in the file is.</summary>
    internal sealed record RowDimensions
    {
        public decimal? Height { get; init; }

        public decimal? Width { get; init; }

        public decimal? Diameter { get; init; }

        public decimal? AcrossFlats { get; init; }

        public decimal? Wall { get; init; }

        public decimal? Thickness { get; init; }

        public decimal? Web { get; init; }

        public decimal? Flange { get; init; }

        public decimal? FlangeSlope { get; init; }

        public decimal? FlangeAt { get; init; }

        public decimal? RootRadius { get; init; }

        public decimal? ToeRadius { get; init; }

        public decimal? OuterRadius { get; init; }

        public decimal? InnerRadius { get; init; }

        public SectionDimensions In(CatalogUnit unit) => new()
        {
            Designation = "",
            Shape = default,
            Height = unit.ToLength(Height),
            Width = unit.ToLength(Width),
            Diameter = unit.ToLength(Diameter),
            AcrossFlats = unit.ToLength(AcrossFlats),
            Wall = unit.ToLength(Wall),
            Thickness = unit.ToLength(Thickness),
            Web = unit.ToLength(Web),
            Flange = unit.ToLength(Flange),
            FlangeSlope = FlangeSlope,
            FlangeAt = unit.ToLength(FlangeAt),
            RootRadius = unit.ToLength(RootRadius),
            ToeRadius = unit.ToLength(ToeRadius),
            OuterRadius = unit.ToLength(OuterRadius),
            InnerRadius = unit.ToLength(InnerRadius),
        };
    }

    /// <summary>Printed values, the wall in the unit of the row.</summary>
    internal sealed record RowPublished
    {
        public required string Mass { get; init; }

        public required decimal MassKgPerM { get; init; }

        public required decimal DensityKgPerM3 { get; init; }

        public decimal? AreaMm2 { get; init; }

        public decimal? AreaWall { get; init; }

        public PublishedValues In(CatalogUnit unit) =>
            new(Mass, new(MassKgPerM), new(DensityKgPerM3), AreaMm2 is { } area ? new Area(area) : null, unit.ToLength(AreaWall));
    }
}

/// <summary>Unit of the dimensions of a row.</summary>
internal enum CatalogUnit
{
    Mm,
    In,
}

internal static class CatalogUnits
{
    public static Length? ToLength(this CatalogUnit unit, decimal? value) => value is not { } given ? null
        : unit == CatalogUnit.In ? Length.FromInches(given) : Length.FromMillimeters(given);
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UseStringEnumConverter = true, UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow)]
[JsonSerializable(typeof(CatalogFile))]
internal sealed partial class CatalogJson : JsonSerializerContext;
