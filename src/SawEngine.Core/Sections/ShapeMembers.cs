using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>Which members the dimensions of each shape have, and the range of each.</summary>
internal static class ShapeMembers
{
    /// <summary>The largest dimension: more than any band saw holds, little enough for exact geometry.</summary>
    public static readonly Length Largest = Length.FromMillimeters(10_000m);

    /// <summary>The smallest dimension, so that an area never rounds to nothing.</summary>
    public static readonly Length Smallest = Length.FromMillimeters(0.001m);

    private static readonly (string Name, Func<SectionDimensions, Length?> Value)[] s_lengths =
    [
        ("height", d => d.Height),
        ("width", d => d.Width),
        ("diameter", d => d.Diameter),
        ("acrossFlats", d => d.AcrossFlats),
        ("wall", d => d.Wall),
        ("thickness", d => d.Thickness),
        ("web", d => d.Web),
        ("flange", d => d.Flange),
        ("flangeAt", d => d.FlangeAt),
    ];

    private static readonly (string Name, Func<SectionDimensions, Length?> Value)[] s_radii =
    [
        ("rootRadius", d => d.RootRadius),
        ("toeRadius", d => d.ToeRadius),
        ("outerRadius", d => d.OuterRadius),
        ("innerRadius", d => d.InnerRadius),
    ];

    /// <summary>Members missing, not used by the shape, or out of range.</summary>
    public static IEnumerable<SectionFault> Faults(SectionDimensions dimensions)
    {
        if (string.IsNullOrWhiteSpace(dimensions.Designation))
            yield return new("designation", "missing", "A section needs a designation.");
        var (required, optional) = Of(dimensions);
        foreach (var (name, given) in Given(dimensions))
        {
            if (!given && required.Contains(name))
                yield return new(name, "missing", name == "outline" ? "A custom section needs an outline, or width and contactWidths." : $"This shape needs {name}.");
            if (given && !required.Contains(name) && !optional.Contains(name))
                yield return new(name, "not_used_by_shape", $"This shape has no {name}.");
        }
        foreach (var fault in OutOfRange(dimensions))
            yield return fault;
    }

    private static IEnumerable<SectionFault> OutOfRange(SectionDimensions dimensions)
    {
        foreach (var (name, value) in s_lengths)
        {
            if (value(dimensions) <= Length.Zero)
                yield return new(name, "must_be_positive", $"{name} must be more than zero.");
            else if (value(dimensions) < Smallest)
                yield return new(name, "too_small", $"{name} is less than 0.001 mm.");
            else if (value(dimensions) > Largest)
                yield return new(name, "too_large", $"{name} is more than 10 m.");
        }
        foreach (var (name, value) in s_radii)
        {
            if (value(dimensions) < Length.Zero)
                yield return new(name, "must_not_be_negative", $"{name} must not be less than zero.");
            else if (value(dimensions) > Largest)
                yield return new(name, "too_large", $"{name} is more than 10 m.");
        }
        if (dimensions.FlangeSlope <= 0)
            yield return new("flangeSlope", "must_be_positive", "flangeSlope must be more than zero; leave it out for parallel flanges.");
        if (dimensions.FlangeSlope >= 1)
            yield return new("flangeSlope", "too_large", "flangeSlope is rise over run and must be less than 1.");
    }

    /// <summary>The members of all shapes, and whether each is given.</summary>
    public static IEnumerable<(string Name, bool Given)> Given(SectionDimensions dimensions) =>
    [
        .. s_lengths.Concat(s_radii).Select(m => (m.Name, m.Value(dimensions) is not null)),
        ("flangeSlope", dimensions.FlangeSlope is not null),
        ("outline", dimensions.Outline is not null),
        ("contactWidths", dimensions.ContactWidths is not null),
        ("contactWidthsTurned", dimensions.ContactWidthsTurned is not null),
        ("areaMm2", dimensions.AreaMm2 is not null),
    ];

    private static (string[] Required, string[] Optional) Of(SectionDimensions dimensions) => dimensions.Shape switch
    {
        SectionShape.Round => (["diameter"], []),
        SectionShape.Square => (["width"], []),
        SectionShape.Hexagon => (["acrossFlats"], []),
        SectionShape.Flat => (["height", "width"], []),
        SectionShape.RoundTube or SectionShape.Pipe => (["diameter", "wall"], []),
        SectionShape.SquareTube => (["width", "wall"], ["outerRadius", "innerRadius"]),
        SectionShape.RectangleTube => (["height", "width", "wall"], ["outerRadius", "innerRadius"]),
        SectionShape.Angle => (["height", "width", "thickness"], ["rootRadius", "toeRadius"]),
        SectionShape.Channel => (["height", "width", "web", "flange"], ["flangeSlope", "flangeAt", "rootRadius", "toeRadius"]),
        SectionShape.IBeam or SectionShape.Tee => (["height", "width", "web", "flange"], ["rootRadius"]),
        SectionShape.Custom when dimensions.IsByContactWidths => (["width", "contactWidths"], ["areaMm2", "contactWidthsTurned"]),
        SectionShape.Custom => (["outline"], []),
        _ => throw new ArgumentOutOfRangeException(nameof(dimensions)),
    };
}
