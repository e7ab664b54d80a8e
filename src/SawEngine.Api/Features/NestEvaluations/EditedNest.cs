using SawEngine.Api.Features.Nests;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
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

    public EditedNest(NestEvaluationRequest request, Catalogs catalogs)
    {
        (_scale, _isMoney) = (new(request.LengthUnit), request.IsCosted);
        Problem = NestGroups.Whole(request, catalogs);
        _cost = LayoutCost.Of(Problem);
        _lines = Problem.Lines.ToDictionary(line => line.Ref.LineId, StringComparer.Ordinal);
        _stock = Problem.Stock.ToDictionary(item => item.StockId, StringComparer.Ordinal);
        Layouts = [.. request.Layouts.Select(Layout)];
        Unplaced = [.. UnplacedOf()];
    }

    /// <summary>All pieces and all stock.</summary>
    public NestProblem Problem { get; }

    /// <summary>The layouts in the order of the request.</summary>
    public IReadOnlyList<EditedLayout> Layouts { get; }

    /// <summary>What is in no layout, by piece.</summary>
    public IReadOnlyList<UnplacedPieces> Unplaced { get; }

    /// <summary>Cost of the bars less the value of their remainders, in millionths.</summary>
    public long ValueMicros => Layouts.Sum(layout => LayoutCost.Micros(layout.Booked));

    /// <summary>The layout of some cuts alone, booked for itself.</summary>
    public BarLayout Part(BarLayout layout, IReadOnlyList<Cut> cuts) => EditedLayout.Book(layout.Stock, layout.Repeat, cuts, Problem.Rules, _cost);

    /// <summary>The layouts as the request would state them with all positions.</summary>
    public IReadOnlyList<EditedLayoutJson> WithPositions() =>
    [
        .. Layouts.Select(layout => layout.Json with
        {
            Cuts = [.. layout.Json.Cuts.Zip(layout.Booked.Cuts, (json, cut) => json with { Start = _scale.Write(cut.Start), End = _scale.Write(cut.End) })],
        }),
    ];

    private EditedLayout Layout(EditedLayoutJson json)
    {
        var isKnown = _stock.TryGetValue(json.StockId, out var offered);
        var stock = offered ?? new() { StockId = json.StockId, Kind = StockKind.Bar, Length = Length.Zero, CostMicros = 0 };
        var booked = EditedLayout.Book(stock, json.Repeat, Cuts(json, stock), Problem.Rules, _cost);
        return new(json, isKnown, booked, Stated(json, booked));
    }

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
        var overall = line is null ? Length.Zero : PieceGeometry.Of(line).Overall;
        var (startCut, endCut) = Faces(json, line);
        var start = _scale.Read(json.Start) ?? (json.End is { } stated ? _scale.Read(stated) - overall : Next(stock, before, startCut));
        return new(new("", json.PieceId), start, _scale.Read(json.End) ?? start + overall, startCut, endCut);
    }

    private Length Next(StockItem stock, Cut? before, EndCut face)
    {
        var next = before is null
            ? LayoutPositions.Lead(stock, face, Problem.Rules)
            : before.End + LayoutPositions.Between(before.EndCut, face, Problem.Rules);
        return Length.Min(next, Farthest);
    }

    private static (EndCut Start, EndCut End) Faces(EditedCutJson json, OrderLine? line) =>
        json.StartCut is null && json.EndCut is null && line is not null
            ? (line.FirstEnd, line.SecondEnd)
            : (json.StartCut?.ToEndCut() ?? EndCut.Square, json.EndCut?.ToEndCut() ?? EndCut.Square);

    private BarLayout Stated(EditedLayoutJson json, BarLayout booked)
    {
        var stated = booked with
        {
            Trim = _scale.Read(json.TrimLength) ?? booked.Trim,
            Remainder = json.Remainder is { } remainder ? Stated(remainder, booked) : booked.Remainder,
        };
        return stated with { KerfTotal = _scale.Read(json.KerfLength) ?? EditedLayout.Rest(stated) };
    }

    private Remainder Stated(EditedRemainderJson json, BarLayout booked)
    {
        var remainder = json.Length is { } length ? EditedLayout.RemainderOf(booked.Stock, _scale.Read(length), _cost) : booked.Remainder;
        return remainder with { Kind = json.Kind ?? remainder.Kind, ValueMicros = json.Value is { } value ? Micros(value, remainder) : remainder.ValueMicros };
    }

    /// <summary>A value that the answer of a nest rounded down is the one that it was rounded from.</summary>
    private long Micros(decimal stated, Remainder remainder) =>
        stated == _scale.WriteMicros(remainder.ValueMicros, _isMoney) ? remainder.ValueMicros
        : (long)(stated * (_isMoney || _scale.Unit == LengthUnit.Mm ? Length.NanometersPerMillimeter : Length.NanometersPerInch));

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
                yield return new(line.Ref, (int)left, UnplacedPieceJson.NotInLayouts);
        }
    }
}
