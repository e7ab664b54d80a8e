using SawEngine.Core.Sections;
using static SawEngine.Core.Tests.Nesting.Some;

namespace SawEngine.Core.Tests.Nesting;

/// <summary>Sections with their true outlines, for what depends on symmetry.</summary>
internal static class Shapes
{
    /// <summary>The web at the left, open to the right.</summary>
    public static Section Channel { get; } = Of(new()
    {
        Designation = "Channel 100x50",
        Shape = SectionShape.Channel,
        Height = Mm(100),
        Width = Mm(50),
        Web = Mm(6),
        Flange = Mm(8.5m),
        FlangeSlope = 0.08m,
        RootRadius = Mm(8.5m),
        ToeRadius = Mm(4.5m),
    });

    /// <summary>The flange on top.</summary>
    public static Section Tee { get; } =
        Of(new() { Designation = "Tee 60", Shape = SectionShape.Tee, Height = Mm(60), Width = Mm(60), Web = Mm(7), Flange = Mm(7), RootRadius = Mm(7) });

    /// <summary>The legs at the left and below.</summary>
    public static Section EqualAngle { get; } =
        Of(new() { Designation = "Angle 50x50x5", Shape = SectionShape.Angle, Height = Mm(50), Width = Mm(50), Thickness = Mm(5), RootRadius = Mm(7), ToeRadius = Mm(3) });

    public static Section UnequalAngle { get; } =
        Of(new() { Designation = "Angle 100x50x6", Shape = SectionShape.Angle, Height = Mm(100), Width = Mm(50), Thickness = Mm(6) });

    public static Section IBeam { get; } =
        Of(new() { Designation = "IPE 200", Shape = SectionShape.IBeam, Height = Mm(200), Width = Mm(100), Web = Mm(5.6m), Flange = Mm(8.5m), RootRadius = Mm(12) });

    public static Section Tube { get; } =
        Of(new() { Designation = "RHS 100x60x4", Shape = SectionShape.RectangleTube, Height = Mm(100), Width = Mm(60), Wall = Mm(4) });

    public static Section Hexagon { get; } = Of(new() { Designation = "Hexagon 36", Shape = SectionShape.Hexagon, AcrossFlats = Mm(36) });

    public static Section Pipe { get; } = Of(new() { Designation = "Tube 88.9x4", Shape = SectionShape.RoundTube, Diameter = Mm(88.9m), Wall = Mm(4) });

    public static Section Flat { get; } = Of(new() { Designation = "Flat 100x20", Shape = SectionShape.Flat, Width = Mm(100), Height = Mm(20) });

    public static Section Of(SectionDimensions dimensions) =>
        OutlineSection.Create(dimensions, out var faults) ?? throw new ArgumentException(string.Join(", ", faults), nameof(dimensions));
}
