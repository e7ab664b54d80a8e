using CsCheck;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Tests.Sections;

/// <summary>Random dimensions: good ones of every shape, and wild ones.</summary>
internal static class RandomSections
{
    private static readonly Gen<Length> s_size = Gen.Long[20_000_000, 600_000_000].Select(Length.FromNanometers);

    private static readonly Gen<double> s_share = Gen.Double[0.02, 0.98];

    private static readonly Gen<double> s_radius = Gen.Frequency((1, Gen.Const(0d)), (4, Gen.Double[0, 0.999]));

    /// <summary>Good dimensions of one shape, half of the radii left out or zero at times.</summary>
    public static Gen<SectionDimensions> Of(SectionShape shape) => shape switch
    {
        SectionShape.Round => s_size.Select(d => Named(shape) with { Diameter = d }),
        SectionShape.Square => s_size.Select(a => Named(shape) with { Width = a }),
        SectionShape.Hexagon => s_size.Select(s => Named(shape) with { AcrossFlats = s }),
        SectionShape.Flat => Gen.Select(s_size, s_size, (h, w) => Named(shape) with { Height = h, Width = w }),
        SectionShape.RoundTube or SectionShape.Pipe => Gen.Select(s_size, s_share, (d, t) => Named(shape) with { Diameter = d, Wall = Of(d, t / 2) }),
        SectionShape.SquareTube => Gen.Select(s_size, s_share, s_radius, Gen.Bool, (w, t, r, given) =>
            Tube(Named(shape) with { Width = w, Wall = Of(w, t / 2) }, w, r, given)),
        SectionShape.RectangleTube => Gen.Select(s_size, s_size, s_share, s_radius, Gen.Bool, (h, w, t, r, given) =>
            Tube(Named(shape) with { Height = h, Width = w, Wall = Of(Length.Min(h, w), t / 2) }, Length.Min(h, w), r, given)),
        SectionShape.Angle => Gen.Select(s_size, s_size, s_share, s_radius, s_radius, (h, w, t, root, toe) =>
        {
            var thickness = Of(Length.Min(h, w), t);
            var toeRadius = Of(Length.Min(thickness, Length.Min(h, w) - thickness), toe);
            return Named(shape) with
            {
                Height = h,
                Width = w,
                Thickness = thickness,
                ToeRadius = toeRadius,
                RootRadius = Of(Length.Min(h, w) - thickness - toeRadius, root),
            };
        }),
        SectionShape.Channel => Gen.Select(s_size, s_size, s_share, s_share, s_radius, s_radius, Gen.Bool, Channel),
        SectionShape.IBeam => Gen.Select(s_size, s_size, s_share, s_share, s_radius, (h, w, web, flange, r) =>
        {
            var (s, t) = (Of(w, web), Of(h, flange / 2));
            return Named(shape) with { Height = h, Width = w, Web = s, Flange = t, RootRadius = Of(Length.Min(Half(w - s), Half(h - 2 * t)), r) };
        }),
        SectionShape.Tee => Gen.Select(s_size, s_size, s_share, s_share, s_radius, (h, w, web, flange, r) =>
        {
            var (s, t) = (Of(w, web), Of(h, flange));
            return Named(shape) with { Height = h, Width = w, Web = s, Flange = t, RootRadius = Of(Length.Min(Half(w - s), h - t), r) };
        }),
        _ => Gen.Double[0.1, 1].Array[3, 40].Select(Gen.Bool, Star),
    };

    /// <summary>Any members with any values, most of them wrong.</summary>
    public static Gen<SectionDimensions> Wild =>
        from shape in Gen.Enum<SectionShape>()
        from lengths in WildLength.Array[13]
        from slope in Any<decimal?>(null, null, null, -1m, 0m, 0.08m, 0.5m, 1m, decimal.MaxValue)
        from outline in Gen.Select(WildCoordinate, WildCoordinate, (x, y) => new OutlinePoint(x, y)).Array[0, 8]
        from hasOutline in Gen.Bool
        select new SectionDimensions
        {
            Designation = "wild",
            Shape = shape,
            Height = lengths[0],
            Width = lengths[1],
            Diameter = lengths[2],
            AcrossFlats = lengths[3],
            Wall = lengths[4],
            Thickness = lengths[5],
            Web = lengths[6],
            Flange = lengths[7],
            FlangeAt = lengths[8],
            RootRadius = lengths[9],
            ToeRadius = lengths[10],
            OuterRadius = lengths[11],
            InnerRadius = lengths[12],
            FlangeSlope = slope,
            Outline = hasOutline ? outline : null,
        };

    /// <summary>The wild dimensions without what the shape does not use, so that most faults are of proportion.</summary>
    public static SectionDimensions OnlyUsed(SectionDimensions wild)
    {
        OutlineSection.Create(wild, out var faults);
        var unused = faults.Where(f => f.Code == "not_used_by_shape").Select(f => f.Member).ToHashSet(StringComparer.Ordinal);
        return wild with
        {
            Height = unused.Contains("height") ? null : wild.Height,
            Width = unused.Contains("width") ? null : wild.Width,
            Diameter = unused.Contains("diameter") ? null : wild.Diameter,
            AcrossFlats = unused.Contains("acrossFlats") ? null : wild.AcrossFlats,
            Wall = unused.Contains("wall") ? null : wild.Wall,
            Thickness = unused.Contains("thickness") ? null : wild.Thickness,
            Web = unused.Contains("web") ? null : wild.Web,
            Flange = unused.Contains("flange") ? null : wild.Flange,
            FlangeAt = unused.Contains("flangeAt") ? null : wild.FlangeAt,
            RootRadius = unused.Contains("rootRadius") ? null : wild.RootRadius,
            ToeRadius = unused.Contains("toeRadius") ? null : wild.ToeRadius,
            OuterRadius = unused.Contains("outerRadius") ? null : wild.OuterRadius,
            InnerRadius = unused.Contains("innerRadius") ? null : wild.InnerRadius,
            FlangeSlope = unused.Contains("flangeSlope") ? null : wild.FlangeSlope,
            Outline = unused.Contains("outline") ? null : wild.Outline,
        };
    }

    private static Gen<Length?> WildLength => Gen.Frequency(
        (1, Any<Length?>(null, null)),
        (1, Any<Length?>(Length.Zero, new Length(1), new Length(-1), new Length(long.MinValue), new Length(long.MaxValue))),
        (6, Gen.Long[1_000, 200_000_000].Select(n => (Length?)new Length(n))));

    private static Gen<Length> WildCoordinate => Gen.Frequency(
        (1, Any(new Length(long.MinValue), new Length(long.MaxValue), Length.Zero)),
        (9, Gen.Long[-6, 6].Select(n => new Length(10_000_000 * n))));

    private static Gen<T> Any<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static SectionDimensions Named(SectionShape shape) => new() { Designation = "random " + shape, Shape = shape };

    private static Length Of(Length whole, double share) => Length.FromNanometers((long)(whole.Nanometers * share));

    private static Length Half(Length length) => Length.FromNanometers(length.Nanometers / 2);

    private static SectionDimensions Tube(SectionDimensions tube, Length smallerSide, double radius, bool given)
    {
        if (!given)
            return tube;
        var outer = Of(Half(smallerSide), radius);
        return tube with { OuterRadius = outer, InnerRadius = Length.Max(outer - tube.Wall!.Value, Length.Zero) };
    }

    private static SectionDimensions Channel(Length h, Length w, double web, double flange, double root, double toe, bool tapered)
    {
        var (s, t) = (Of(w, web), Of(h, flange / 2));
        var named = Named(SectionShape.Channel) with { Height = h, Width = w, Web = s, Flange = t };
        if (!tapered)
        {
            var parallelToe = Of(Length.Min(t, w - s), toe / 2);
            return named with { ToeRadius = parallelToe, RootRadius = Of(Length.Min(w - s - parallelToe, Half(h - 2 * t)), root) };
        }
        // The slope stays below what leaves a toe and keeps the flanges apart; radii below what half of a side holds.
        var steepest = Math.Min((double)t.Nanometers / w.Nanometers, (double)(Half(h) - t).Nanometers / w.Nanometers);
        var slope = Math.Min(steepest * root, 0.9) + 1e-6;
        var smallest = Length.Min(Of(t, 0.5), Length.Min(Half(w - s), Of(Half(h) - t, 0.5)));
        return named with { FlangeSlope = (decimal)slope, ToeRadius = Of(smallest, toe / 3), RootRadius = Of(smallest, root / 3) };
    }

    /// <summary>A star around the origin, so that it never crosses itself; drawn either way round.</summary>
    private static SectionDimensions Star(double[] radii, bool reversed)
    {
        var points = radii.Select((r, i) => new OutlinePoint(
            new Length((long)(1e8 * r * Math.Cos(2 * Math.PI * i / radii.Length))), new Length((long)(1e8 * r * Math.Sin(2 * Math.PI * i / radii.Length)))));
        return Named(SectionShape.Custom) with { Outline = [.. reversed ? points.Reverse() : points] };
    }
}
