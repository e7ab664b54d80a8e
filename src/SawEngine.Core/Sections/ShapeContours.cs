using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>The contours of each shape and the exact size of its bounding box, from dimensions that have no fault.</summary>
internal static class ShapeContours
{
    public static (Length Height, Length Width, IReadOnlyList<Contour> Contours) Of(SectionDimensions d) => d.Shape switch
    {
        SectionShape.Round => Round(d.Diameter!.Value),
        SectionShape.Square => Rectangle(d.Width!.Value, d.Width.Value),
        SectionShape.Hexagon => Hexagon(d.AcrossFlats!.Value),
        SectionShape.Flat => Rectangle(d.Height!.Value, d.Width!.Value),
        SectionShape.RoundTube or SectionShape.Pipe => RoundTube(d.Diameter!.Value, d.Wall!.Value),
        SectionShape.SquareTube or SectionShape.RectangleTube => RectangleTube(d.Height ?? d.Width!.Value, d.Width!.Value, d.Wall!.Value, TubeRadii.Of(d)),
        SectionShape.Angle => (d.Height!.Value, d.Width!.Value, [Angle(d)]),
        SectionShape.Channel => (d.Height!.Value, d.Width!.Value, [Channel(d)]),
        SectionShape.IBeam => (d.Height!.Value, d.Width!.Value, [IBeam(d)]),
        SectionShape.Tee => (d.Height!.Value, d.Width!.Value, [Tee(d)]),
        SectionShape.Custom => (Polygon.Extent(d.Outline!, p => p.Y), Polygon.Extent(d.Outline!, p => p.X), [new(Polygon.Corners(d.Outline!))]),
        _ => throw new ArgumentOutOfRangeException(nameof(d)),
    };

    private static (Length, Length, IReadOnlyList<Contour>) Round(Length diameter)
    {
        var radius = Mm(diameter) / 2;
        return (diameter, diameter, [Contour.Circle(new(radius, radius), radius)]);
    }

    private static (Length, Length, IReadOnlyList<Contour>) Rectangle(Length height, Length width) =>
        (height, width, [Contour.Rectangle(0, 0, Mm(width), Mm(height))]);

    /// <summary>A hexagon on a flat, 2/sqrt 3 of its height wide: rounded up to the computed grid, with the hexagon in the middle.</summary>
    private static (Length, Length, IReadOnlyList<Contour>) Hexagon(Length acrossFlats)
    {
        var height = Mm(acrossFlats);
        var side = height / Math.Sqrt(3);
        var width = Length.RoundUpToGrid(2 * side);
        var left = (Mm(width) - 2 * side) / 2;
        return (acrossFlats, width,
        [
            new(
            [
                new(left, height / 2), new(left + side / 2, 0), new(left + 1.5 * side, 0),
                new(left + 2 * side, height / 2), new(left + 1.5 * side, height), new(left + side / 2, height),
            ]),
        ]);
    }

    private static (Length, Length, IReadOnlyList<Contour>) RoundTube(Length diameter, Length wall)
    {
        var radius = Mm(diameter) / 2;
        var center = new Point(radius, radius);
        return (diameter, diameter, [Contour.Circle(center, radius), Contour.Circle(center, radius - Mm(wall)).AsHole()]);
    }

    private static (Length, Length, IReadOnlyList<Contour>) RectangleTube(Length height, Length width, Length wall, TubeRadii radii)
    {
        var (h, w, t) = (Mm(height), Mm(width), Mm(wall));
        return (height, width,
        [
            Contour.Rectangle(0, 0, w, h, Mm(radii.Outer), "outerRadius"),
            Contour.Rectangle(t, t, w - 2 * t, h - 2 * t, Mm(radii.Inner), "innerRadius").AsHole(),
        ]);
    }

    /// <summary>One leg upright at the left, one lying at the bottom.</summary>
    private static Contour Angle(SectionDimensions d)
    {
        var (h, w, t) = (Mm(d.Height), Mm(d.Width), Mm(d.Thickness));
        return new([new(0, 0), new(t, 0, Mm(d.ToeRadius), "toeRadius"), Root(d, t, h - t), new(w, h - t, Mm(d.ToeRadius), "toeRadius"), new(w, h), new(0, h)]);
    }

    /// <summary>The web upright at the left.</summary>
    private static Contour Channel(SectionDimensions d)
    {
        var (h, w, web) = (Mm(d.Height), Mm(d.Width), Mm(d.Web));
        var flange = FlangeTaper.Of(d);
        return new(
        [
            new(0, 0), new(w, 0), new(w, flange.AtToe, Mm(d.ToeRadius), "toeRadius"), Root(d, web, flange.AtWeb),
            Root(d, web, h - flange.AtWeb), new(w, h - flange.AtToe, Mm(d.ToeRadius), "toeRadius"), new(w, h), new(0, h),
        ]);
    }

    /// <summary>The web upright.</summary>
    private static Contour IBeam(SectionDimensions d)
    {
        var (h, w, flange) = (Mm(d.Height), Mm(d.Width), Mm(d.Flange));
        var (left, right) = Web(d);
        return new(
        [
            new(0, 0), new(w, 0), new(w, flange), Root(d, right, flange), Root(d, right, h - flange), new(w, h - flange),
            new(w, h), new(0, h), new(0, h - flange), Root(d, left, h - flange), Root(d, left, flange), new(0, flange),
        ]);
    }

    /// <summary>The flange on top.</summary>
    private static Contour Tee(SectionDimensions d)
    {
        var (h, w, flange) = (Mm(d.Height), Mm(d.Width), Mm(d.Flange));
        var (left, right) = Web(d);
        return new([new(0, 0), new(w, 0), new(w, flange), Root(d, right, flange), new(right, h), new(left, h), Root(d, left, flange), new(0, flange)]);
    }

    private static Corner Root(SectionDimensions d, double x, double y) => new(x, y, Mm(d.RootRadius), "rootRadius");

    private static (double Left, double Right) Web(SectionDimensions d) => ((Mm(d.Width) - Mm(d.Web)) / 2, (Mm(d.Width) + Mm(d.Web)) / 2);

    private static double Mm(Length? length) => length?.ApproximateMillimeters ?? 0;
}
