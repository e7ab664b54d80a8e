using SawEngine.Api.Wire;
using SawEngine.Core.Sections;

namespace SawEngine.Api.Features.Stock;

/// <summary>Sections of the request's own from wire to trade.</summary>
public static class SectionMapping
{
    private const decimal SmallestArea = 0.000001m;
    private const decimal LargestArea = 100_000_000m;

    /// <summary>The section; null where its dimensions make none.</summary>
    public static Section? ToSection(this SectionJson section, LengthScale scale) =>
        section.ToDimensions(scale) is { } dimensions ? Section.Create(dimensions, out _) : null;

    /// <summary>The dimensions; null where one of them is out of bounds or finer than the grid.</summary>
    public static SectionDimensions? ToDimensions(this SectionJson section, LengthScale scale) => IsWithinBounds(section, scale)
        ? new()
        {
            Designation = section.SectionId,
            Shape = section.Shape,
            Height = scale.Read(section.Height),
            Width = scale.Read(section.Width),
            Diameter = scale.Read(section.Diameter),
            AcrossFlats = scale.Read(section.AcrossFlats),
            Wall = scale.Read(section.Wall),
            Thickness = scale.Read(section.Thickness),
            Web = scale.Read(section.Web),
            Flange = scale.Read(section.Flange),
            FlangeSlope = section.FlangeSlope,
            FlangeAt = scale.Read(section.FlangeAt),
            RootRadius = scale.Read(section.RootRadius),
            ToeRadius = scale.Read(section.ToeRadius),
            OuterRadius = scale.Read(section.OuterRadius),
            InnerRadius = scale.Read(section.InnerRadius),
            Outline = section.Outline is { } outline ? [.. outline.Select(point => new OutlinePoint(scale.Read(point.X), scale.Read(point.Y)))] : null,
            ContactWidths = ToContactWidths(section.ContactWidths, scale),
            ContactWidthsTurned = ToContactWidths(section.ContactWidthsTurned, scale),
            AreaMm2 = section.AreaMm2,
        }
        : null;

    private static bool IsWithinBounds(SectionJson section, LengthScale scale) =>
        Lengths(section).All(length => length is null or >= 0 && scale.CanRead(length))
        && section.FlangeSlope is null or (>= 0 and <= 1)
        && section.Outline is not { Count: < 3 }
        && (section.Outline ?? []).All(point => scale.CanRead(point.X) && scale.CanRead(point.Y))
        && IsWithinBounds(section.ContactWidths, scale) && IsWithinBounds(section.ContactWidthsTurned, scale)
        && section.AreaMm2 is null or (>= SmallestArea and <= LargestArea);

    private static bool IsWithinBounds(IReadOnlyList<ContactWidthJson>? widths, LengthScale scale) =>
        widths is null || (widths.Count >= 2 && widths.All(pair => pair.Depth >= 0 && pair.Width >= 0 && pair.Runs is >= 1 and <= 100 && scale.CanRead(pair.Depth) && scale.CanRead(pair.Width)));

    private static IReadOnlyList<ContactWidth>? ToContactWidths(IReadOnlyList<ContactWidthJson>? widths, LengthScale scale) =>
        widths is null ? null : [.. widths.Select(pair => new ContactWidth(scale.Read(pair.Depth), scale.Read(pair.Width), pair.Runs))];

    private static IEnumerable<decimal?> Lengths(SectionJson section) =>
    [
        section.Height, section.Width, section.Diameter, section.AcrossFlats, section.Wall, section.Thickness, section.Web, section.Flange,
        section.FlangeAt, section.RootRadius, section.ToeRadius, section.OuterRadius, section.InnerRadius,
    ];
}
