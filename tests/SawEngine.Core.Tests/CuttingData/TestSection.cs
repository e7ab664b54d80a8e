using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Tests.CuttingData;

/// <summary>Simple sections made of rectangles or a disk, independent of the catalog's.</summary>
internal sealed class TestSection : Section
{
    private readonly Func<double, IReadOnlyList<(double Start, double End)>> runsAt;
    private readonly Func<TestSection> turned;
    private readonly Length height;
    private readonly Length width;

    private TestSection(Length height, Length width, decimal areaMm2, double[] breakpoints, Func<double, IReadOnlyList<(double, double)>> runsAt, Func<TestSection> turned)
    {
        this.height = height;
        this.width = width;
        Area = new(areaMm2);
        Breakpoints = breakpoints;
        this.runsAt = runsAt;
        this.turned = turned;
    }

    public override Length Height => height;

    public override Length Width => width;

    public override Area Area { get; }

    internal override IReadOnlyList<double> Breakpoints { get; }

    internal override IReadOnlyList<(double Start, double End)> RunsAt(double depthMillimeters) => runsAt(depthMillimeters);

    internal override Section Turned() => turned();

    public static TestSection Solid(decimal width, decimal height) => new(
        Mm(height), Mm(width), width * height, [0, (double)height], _ => [(0, (double)width)], () => Solid(height, width))
    {
        Designation = $"Flat {width}x{height}",
        Shape = width == height ? SectionShape.Square : SectionShape.Flat,
        Source = "test",
        Confidence = Confidence.Computed,
    };

    public static TestSection Round(decimal diameter)
    {
        var radius = (double)diameter / 2;
        return new(Mm(diameter), Mm(diameter), (decimal)(Math.PI * radius * radius), [0, radius, 2 * radius], Chord, () => Round(diameter))
        {
            Designation = $"Round {diameter}",
            Shape = SectionShape.Round,
            Source = "test",
            Confidence = Confidence.Computed,
        };

        IReadOnlyList<(double, double)> Chord(double depth)
        {
            var half = Math.Sqrt(Math.Max(0, radius * radius - (radius - depth) * (radius - depth)));
            return [(radius - half, radius + half)];
        }
    }

    public static TestSection RoundTube(decimal diameter, decimal wall)
    {
        var (outer, inner) = ((double)diameter / 2, (double)(diameter / 2 - wall));
        return new(
            Mm(diameter), Mm(diameter), (decimal)(Math.PI * (outer * outer - inner * inner)), [0, outer - inner, outer, outer + inner, 2 * outer],
            Runs, () => RoundTube(diameter, wall))
        {
            Designation = $"Round tube {diameter}x{wall}",
            Shape = SectionShape.RoundTube,
            Source = "test",
            Confidence = Confidence.Computed,
        };

        IReadOnlyList<(double, double)> Runs(double depth)
        {
            var (half, hollow) = (HalfChord(outer, depth - outer), HalfChord(inner, depth - outer));
            return hollow > 0 ? [(outer - half, outer - hollow), (outer + hollow, outer + half)] : [(outer - half, outer + half)];
        }

        static double HalfChord(double radius, double fromMiddle) => Math.Sqrt(Math.Max(0, radius * radius - fromMiddle * fromMiddle));
    }

    /// <summary>A rectangle tube with sharp corners.</summary>
    public static TestSection Tube(decimal width, decimal height, decimal wall)
    {
        var (w, h, t) = ((double)width, (double)height, (double)wall);
        return new(
            Mm(height), Mm(width), width * height - (width - 2 * wall) * (height - 2 * wall), [0, t, h - t, h],
            depth => depth <= t || depth >= h - t ? [(0, w)] : [(0, t), (w - t, w)],
            () => Tube(height, width, wall))
        {
            Designation = $"Tube {width}x{height}x{wall}",
            Shape = SectionShape.RectangleTube,
            Source = "test",
            Confidence = Confidence.Computed,
        };
    }

    /// <summary>An I-beam with sharp corners, standing.</summary>
    public static TestSection Beam(decimal height, decimal width, decimal web, decimal flange)
    {
        var (h, b, tw, tf) = ((double)height, (double)width, (double)web, (double)flange);
        return new(
            Mm(height), Mm(width), 2 * width * flange + (height - 2 * flange) * web, [0, tf, h - tf, h],
            depth => depth <= tf || depth >= h - tf ? [(0, b)] : [((b - tw) / 2, (b + tw) / 2)],
            () => LyingBeam(height, width, web, flange))
        {
            Designation = $"Beam {height}x{width}x{web}x{flange}",
            Shape = SectionShape.IBeam,
            Source = "test",
            Confidence = Confidence.Computed,
        };
    }

    private static TestSection LyingBeam(decimal height, decimal width, decimal web, decimal flange)
    {
        var (h, b, tw, tf) = ((double)height, (double)width, (double)web, (double)flange);
        return new(
            Mm(width), Mm(height), 2 * width * flange + (height - 2 * flange) * web, [0, (b - tw) / 2, (b + tw) / 2, b],
            depth => Math.Abs(depth - b / 2) < tw / 2 ? [(0, h)] : [(0, tf), (h - tf, h)],
            () => Beam(height, width, web, flange))
        {
            Designation = $"Beam {height}x{width}x{web}x{flange}",
            Shape = SectionShape.IBeam,
            Source = "test",
            Confidence = Confidence.Computed,
        };
    }

    private static Length Mm(decimal value) => Length.FromMillimeters(value);
}
