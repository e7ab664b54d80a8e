using SawEngine.Api.Features.Nests;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>An edited nest from wire to trade; the rules have passed.</summary>
internal sealed class EditedNest
{
    /// <summary>Farther than any bar reaches: positions beyond count as here, so that they add up.</summary>
    private static readonly Length Farthest = Length.FromMillimeters(100_000_000_000m);

    private readonly LengthScale _scale;
    private readonly bool _isMoney;
    private readonly LayoutCost _cost;
    private readonly Dictionary<string, OrderLine> _lines;
    private readonly Dictionary<string, StockItem> _stock;

    public EditedNest(NestEvaluationRequest request, NestMaterials materials)
    {
        (_scale, _isMoney) = (new(request.LengthUnit), request.IsCosted);
        Problem = NestGroups.Whole(request, materials);
        _cost = LayoutCost.Of(Problem);
        _lines = Problem.Lines.ToDictionary(line => line.Ref.LineId, StringComparer.Ordinal);
        _stock = Problem.Stock.ToDictionary(item => item.StockId, StringComparer.Ordinal);
        Layouts = Stated(request, Limited([.. request.Layouts.Select(Booked)], request, new(request, materials)));
        Unplaced = [.. UnplacedOf()];
    }

    /// <summary>All pieces and all stock.</summary>
    public NestProblem Problem { get; }

    /// <summary>The layouts in the order of the request.</summary>
    public IReadOnlyList<EditedLayout> Layouts { get; }

    /// <summary>What is in no layout, by piece.</summary>
    public IReadOnlyList<UnplacedPieces> Unplaced { get; }

    /// <summary>The layouts in the order in which they are cut.</summary>
    public IEnumerable<EditedLayout> InSequence => Layouts.OrderBy(layout => layout.Json.Sequence ?? int.MaxValue).ThenBy(layout => layout.Json.LayoutId, StringComparer.Ordinal);

    /// <summary>The layouts of stock that is offered, in the order in which they are cut.</summary>
    public IEnumerable<BarLayout> Known => InSequence.Where(layout => layout.IsKnown).Select(layout => layout.Booked);

    /// <summary>Cost of the layouts of stock that is offered, in millionths.</summary>
    public long ValueMicros => Known.Sum(_cost.Micros);

    /// <summary>The layout of some cuts alone, booked for itself; how bars are bundled is asked of the layout as a whole.</summary>
    public BarLayout Part(BarLayout layout, IReadOnlyList<Cut> cuts) => Book(layout.Stock, layout.Repeat, CutBundle.Single, cuts);

    /// <summary>The layouts as the request would state them with all positions.</summary>
    public IReadOnlyList<EditedLayoutJson> WithPositions() =>
    [
        .. Layouts.Select(layout => layout.Json with
        {
            Cuts = [.. layout.Json.Cuts.Zip(layout.Booked.Cuts, (json, cut) => json with { Start = _scale.Write(cut.Start), End = _scale.Write(cut.End) })],
        }),
    ];

    private BarLayout Booked(EditedLayoutJson json)
    {
        var stock = _stock.GetValueOrDefault(json.StockId) ?? new() { StockId = json.StockId, Kind = StockKind.Bar, Length = Length.Zero, CostMicros = 0 };
        return Book(stock, json.Repeat, json.Bundle is { } bundle ? CutBundle.Full(bundle.Wide, bundle.High) : CutBundle.Single, Cuts(json, stock));
    }

    private BarLayout Book(StockItem stock, int repeat, CutBundle bundle, IReadOnlyList<Cut> cuts) =>
        EditedLayout.Book(stock, repeat, bundle, cuts, cuts.Select(cut => _lines.GetValueOrDefault(cut.Piece.LineId)).OfType<OrderLine>(), Problem.Rules, _cost);

    /// <summary>The layouts with no more remnants of each material than may be left.</summary>
    private BarLayout[] Limited(BarLayout[] booked, NestEvaluationRequest request, EditedMaterials materials)
    {
        if (Problem.Remnants?.MostNew is not { } most)
            return booked;
        var remnants = new EditedRemnants(most, _cost);
        foreach (var rows in Enumerable.Range(0, booked.Length).GroupBy(i => materials.OfStock(request.Layouts[i].StockId)).Select(rows => rows.ToList()))
        {
            foreach (var (i, layout) in rows.Zip(remnants.Kept(rows.ConvertAll(i => (booked[i], request.Layouts[i].Remainder?.Kind)))))
                booked[i] = layout;
        }
        return booked;
    }

    private IReadOnlyList<EditedLayout> Stated(NestEvaluationRequest request, BarLayout[] booked) =>
        [.. request.Layouts.Zip(booked, (json, layout) => new EditedLayout(json, _stock.ContainsKey(json.StockId), layout, Stated(json, layout)))];

    private List<Cut> Cuts(EditedLayoutJson layout, StockItem stock)
    {
        var cuts = new List<Cut>(layout.Cuts.Count);
        foreach (var json in layout.Cuts)
            cuts.Add(Cut(json, stock, cuts.Count > 0 ? cuts[^1] : null));
        return cuts;
    }

    private Cut Cut(EditedCutJson json, StockItem stock, Cut? before)
    {
        var line = _lines.GetValueOrDefault(json.PieceId);
        var geometry = line is null ? default : PieceGeometry.Of(line);
        var (startCut, endCut) = Faces(json, line);
        var start = _scale.Read(json.Start) ?? (json.End is { } stated ? _scale.Read(stated) - geometry.Overall : Next(stock, before, startCut));
        var end = _scale.Read(json.End) ?? start + geometry.Overall;
        return new(new("", json.PieceId), start, end, startCut, endCut, json.Turn, end - start - geometry.Overall + geometry.Centerline);
    }

    private Length Next(StockItem stock, Cut? before, EndCut face)
    {
        var next = before is null
            ? LayoutPositions.Lead(stock, face, Problem.Rules)
            : before.End + LayoutPositions.Between(before.EndCut, face, stock.Section, Problem.Rules);
        return Length.Min(next, Farthest);
    }

    private static (EndCut Start, EndCut End) Faces(EditedCutJson json, OrderLine? line)
    {
        if (json.StartCut is not null || json.EndCut is not null || line is null)
            return (json.StartCut?.ToEndCut() ?? EndCut.Square, json.EndCut?.ToEndCut() ?? EndCut.Square);
        var faces = PieceFaces.Of(line, json.Turn);
        return (faces.First, faces.Second);
    }

    private BarLayout Stated(EditedLayoutJson json, BarLayout booked)
    {
        var stated = booked with
        {
            Cuts = [.. json.Cuts.Zip(booked.Cuts, (cut, lies) => lies with { Centerline = _scale.Read(cut.CenterlineLength) ?? lies.Centerline })],
            Trim = _scale.Read(json.TrimLength) ?? booked.Trim,
            Remainder = json.Remainder is { } remainder ? Stated(remainder, booked) : booked.Remainder,
        };
        return stated with { KerfTotal = _scale.Read(json.KerfLength) ?? EditedLayout.Rest(stated) };
    }

    private Remainder Stated(EditedRemainderJson json, BarLayout booked)
    {
        var remainder = json.Length is { } length && _scale.Read(length) != booked.Remainder.Length
            ? EditedLayout.RemainderOf(booked.Stock, _scale.Read(length), _cost)
            : booked.Remainder;
        return remainder with { Kind = json.Kind ?? remainder.Kind, ValueMicros = json.Value is { } value ? Micros(value, remainder) : remainder.ValueMicros };
    }

    /// <summary>A value that the answer of a nest rounded down is the one that it was rounded from.</summary>
    private long Micros(decimal stated, Remainder remainder) =>
        stated == _scale.WriteMicros(remainder.ValueMicros, _isMoney) ? remainder.ValueMicros
        : _scale.ReadMicros(stated, _isMoney);

    private IEnumerable<UnplacedPieces> UnplacedOf()
    {
        var placed = new Dictionary<PieceRef, long>();
        foreach (var layout in Layouts)
        {
            foreach (var cut in layout.Booked.Cuts)
                placed[cut.Piece] = placed.GetValueOrDefault(cut.Piece) + layout.Booked.Repeat;
        }
        foreach (var line in Problem.Lines)
        {
            var left = line.Quantity - placed.GetValueOrDefault(line.Ref);
            if (left > 0)
                yield return UnplacedPieces.Of(line, (int)left, UnplacedPieceJson.NotInLayouts);
        }
    }
}
