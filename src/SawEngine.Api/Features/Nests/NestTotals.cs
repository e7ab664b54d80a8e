using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Quantities;

namespace SawEngine.Api.Features.Nests;

/// <summary>Adds layouts up, in the request's unit.</summary>
internal sealed class NestTotals
{
    private readonly LengthScale _scale;
    private readonly Length _kerf;
    private readonly IReadOnlyList<(NestMaterial Material, BarLayout Layout)> _layouts;
    private readonly Dictionary<NestMaterial, decimal> _weights;

    /// <summary>Layouts in the order in which they are cut, and all materials that are wanted, whether or not there are layouts of them.</summary>
    public NestTotals(
        NestProblemRequest request, NestMaterials materials, IEnumerable<NestMaterial> wanted, IReadOnlyList<(NestMaterial Material, BarLayout Layout)> layouts)
    {
        (_scale, _layouts) = (new(request.LengthUnit), layouts);
        _kerf = _scale.Read(request.Cut.Kerf);
        _weights = Weights([.. wanted.Concat(layouts.Select(l => l.Material)).Distinct()], materials);
    }

    public NestTotalsJson Write() => new()
    {
        BarsUsed = _layouts.Sum(l => l.Layout.Repeat),
        CutCount = _layouts.Sum(l => CutCount.Of(l.Layout, _kerf) * l.Layout.Cycles),
        MostOpenLines = OpenLines.Most([.. _layouts.Select(l => l.Layout)]),
        StockLength = Sum(l => l.Stock.Length),
        PieceLength = Sum(PieceLength),
        KerfLength = Sum(l => Length.Max(l.KerfTotal, Length.Zero)),
        TrimLength = Sum(l => l.Trim),
        RemnantLength = Sum(l => Remainder(l, RemainderKind.Remnant)),
        ScrapLength = Sum(l => Remainder(l, RemainderKind.Scrap)),
        MaterialYield = Yield(),
    };

    private decimal Sum(Func<BarLayout, Length> length) =>
        _scale.Write(Length.FromNanometers(_layouts.Sum(l => checked(length(l.Layout).Nanometers * l.Layout.Repeat))));

    private static Length PieceLength(BarLayout layout) =>
        Length.FromNanometers(layout.Cuts.Sum(cut => Length.Max(cut.Centerline, Length.Zero).Nanometers));

    private static Length Remainder(BarLayout layout, RemainderKind kind) => layout.Remainder.Kind == kind ? layout.Remainder.Length : Length.Zero;

    private decimal? Yield()
    {
        var (used, all) = (0m, 0m);
        foreach (var (material, layout) in _layouts)
        {
            used += _weights[material] * layout.Repeat * (PieceLength(layout) + Remainder(layout, RemainderKind.Remnant)).Meters;
            all += _weights[material] * layout.Repeat * layout.Stock.Length.Meters;
        }
        return all == 0 ? null : Math.Min(1m, Math.Round(used / all, 4, MidpointRounding.ToEven));
    }

    /// <summary>Kilograms of a meter of each material; 1 for all where the catalog does not know one.</summary>
    private static Dictionary<NestMaterial, decimal> Weights(IReadOnlyList<NestMaterial> wanted, NestMaterials materials)
    {
        var known = wanted.Select(materials.KilogramsPerMeter).ToList();
        return wanted.Zip(known).ToDictionary(pair => pair.First, pair => known.Contains(null) ? 1m : pair.Second!.Value);
    }
}
