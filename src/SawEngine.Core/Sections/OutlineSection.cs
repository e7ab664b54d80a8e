using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>
/// A section by its outline of straight segments and circular arcs. Height and width come exactly from the dimensions (of a hexagon the width is
/// rounded up to 0.0127 mm); the area is exact by Green's theorem but for floating point, and rounded once to 1e-6 mm2, half to even.
/// </summary>
public sealed class OutlineSection : Section
{
    private readonly Outline _outline;
    private OutlineSection? _turned;

    private OutlineSection(Outline outline, Length height, Length width, Area area)
    {
        (_outline, Height, Width, Area) = (outline, height, width, area);
    }

    /// <inheritdoc/>
    public override Length Height { get; }

    /// <inheritdoc/>
    public override Length Width { get; }

    /// <inheritdoc/>
    public override Area Area { get; }

    internal override IReadOnlyList<double> Breakpoints => _outline.Breakpoints;

    /// <summary>The section of these dimensions as a caller stated them, or null with every fault found.</summary>
    public static new OutlineSection? Create(SectionDimensions dimensions, out IReadOnlyList<SectionFault> faults) =>
        Create(dimensions, "the request", Confidence.Caller, out faults);

    /// <summary>
    /// The section of these dimensions, or null with the faults: of members first, of proportions where the members are right, of radii where
    /// the proportions are. A tube whose corner radii are not given says so in its source, and is trusted as common practice at most.
    /// </summary>
    public static OutlineSection? Create(SectionDimensions dimensions, string source, Confidence confidence, out IReadOnlyList<SectionFault> faults)
    {
        faults = [.. ShapeMembers.Faults(dimensions)];
        if (faults.Count == 0)
            faults = Proportions.Faults(dimensions);
        if (faults.Count > 0)
            return null;
        var (height, width, contours) = ShapeContours.Of(dimensions);
        faults = [.. contours.SelectMany(c => c.RadiiThatDoNotFit()).Distinct().Select(TooLarge)];
        if (faults.Count > 0)
            return null;
        var outline = new Outline(contours, height.ApproximateMillimeters, width.ApproximateMillimeters);
        var area = new Area(decimal.Round((decimal)outline.Area, 6, MidpointRounding.ToEven));
        var assumed = TubeRadii.AreAssumed(dimensions);
        return new(outline, height, width, area)
        {
            Designation = dimensions.Designation,
            Shape = dimensions.Shape,
            Source = assumed ? source + "; corner radii from the wall, common practice" : source,
            Confidence = assumed ? Confidence.CommonPractice : confidence,
        };
    }

    internal override IReadOnlyList<(double Start, double End)> RunsAt(double depthMillimeters) => _outline.RunsAt(depthMillimeters);

    /// <summary>Made once; two threads that make it at the same time make the same.</summary>
    internal override Section Turned() => _turned ??= With(_outline.Turned(), Width, Height);

    internal override Section Canted(Angle cant)
    {
        var canted = _outline.Canted(cant.Radians);
        return With(canted, Length.RoundUpToGrid(canted.Height), Length.RoundUpToGrid(canted.Width));
    }

    private OutlineSection With(Outline outline, Length height, Length width) => new(outline, height, width, Area)
    {
        Designation = Designation,
        Shape = Shape,
        Source = Source,
        Confidence = Confidence,
    };

    private static SectionFault TooLarge(string radius) => new(radius, "too_large", $"{radius} does not fit into the sides that meet there.");
}
