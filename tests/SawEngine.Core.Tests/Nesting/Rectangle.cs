using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Tests.Nesting;

/// <summary>A section of which nesting needs to know only its bounding box and its area.</summary>
internal sealed class Rectangle(Length width, Length height, Area area) : Section
{
    public override Length Height => height;

    public override Length Width => width;

    public override Area Area => area;

    internal override IReadOnlyList<double> Breakpoints => [0, (double)height.Millimeters];

    internal override IReadOnlyList<(double Start, double End)> RunsAt(double depthMillimeters) => [(0, (double)width.Millimeters)];

    internal override Section Turned() =>
        new Rectangle(height, width, area) { Designation = Designation, Shape = Shape, Source = Source, Confidence = Confidence };

    public static Rectangle Of(string designation, decimal width, decimal height, decimal areaMm2, SectionShape shape = SectionShape.IBeam) =>
        new(Length.FromMillimeters(width), Length.FromMillimeters(height), new(areaMm2))
        {
            Designation = designation,
            Shape = shape,
            Source = "stated by the test",
            Confidence = Confidence.Caller,
        };
}
