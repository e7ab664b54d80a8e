using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.Nests;

/// <summary>Joins the nests of all groups and writes them in the request's unit.</summary>
internal sealed class NestAnswer(NestRequest request, Catalogs catalogs, IReadOnlyList<(NestGroup Group, Nest Nest)> nests)
{
    public const string Infeasible = "infeasible";

    private readonly LengthScale _scale = new(request.LengthUnit);
    private readonly bool _isMoney = NestGroups.IsCosted(request);

    public NestResponse Write(OperationContext context)
    {
        if (TrimIsNotUsed)
            context.Warnings.Add(TrimWarning());
        if (NotKept() is var notKept and > 0)
            context.Warnings.Add(RemnantWarning(notKept));
        context.Warnings.AddRange(NominalLength.Warnings(request.Stock, item => item.StockId, item => item.NominalLength, Used(), _scale));
        return new()
        {
            RequestDigest = context.RequestDigest,
            LengthUnit = WireEnum.Text(request.LengthUnit),
            Status = Status(),
            Objective = Objective(),
            Layouts = [.. nests.SelectMany(n => Layouts(n.Group, n.Nest)).OrderBy(layout => layout.LayoutId, StringComparer.Ordinal)],
            Unplaced = [.. nests.SelectMany(n => n.Nest.Unplaced).OrderBy(unplaced => unplaced.Piece).Select(Unplaced)],
            Claims = Claims(),
            Totals = Totals(),
            StoppedBy = WireEnum.Text(Weakest()),
            Warnings = context.Warnings,
            Timing = new() { TotalMs = context.ElapsedMs },
        };
    }

    private bool TrimIsNotUsed => request.Cut.Trim > 0 && request.Stock.All(item => item.EndCondition == EndCondition.Sawn);

    private static WarningJson TrimWarning() => new()
    {
        Code = WarningCode.TrimNotUsed,
        Pointer = "#/cut/trim",
        Detail = "All stock has sawn ends, which need no trim; state `endCondition` where an end is raw.",
    };

    /// <summary>Remainders that are scrap only because no more remnants may be left.</summary>
    private long NotKept() => nests.Sum(n => RemnantLimit.NotKept(n.Nest.Layouts, LayoutCost.Of(n.Group.Problem)));

    private static WarningJson RemnantWarning(long notKept) => new()
    {
        Code = WarningCode.RemnantLimitReached,
        Pointer = "#/remnants/mostNew",
        Detail = $"Remainders that are long enough to be kept, but count as scrap because no more remnants may be left: {notKept}.",
    };

    private static UnplacedPieceJson Unplaced(UnplacedPieces unplaced) => new()
    {
        PieceId = unplaced.Piece.LineId,
        Quantity = unplaced.Quantity,
        Reason = unplaced.Reason,
    };

    private IEnumerable<BarLayout> AllLayouts => nests.SelectMany(n => n.Nest.Layouts);

    private string Status() =>
        !AllLayouts.Any() ? Infeasible
        : nests.Any(n => n.Nest.Unplaced.Any(pieces => !pieces.IsAccepted)) ? "partial"
        : nests.All(n => n.Nest.Unplaced.Count == 0 && n.Nest.BoundMicros >= n.Nest.ValueMicros) ? "optimal"
        : "feasible";

    private NestObjectiveJson Objective()
    {
        var value = nests.Sum(n => n.Nest.ValueMicros);
        var bound = nests.Sum(n => Math.Min(n.Nest.BoundMicros, n.Nest.ValueMicros));
        return new()
        {
            Value = _scale.WriteMicros(value, _isMoney),
            Bound = _scale.WriteMicros(bound, _isMoney),
            Gap = Gap.Of(value, bound),
        };
    }

    private StoppedBy Weakest() => nests.Max(n => n.Nest.StoppedBy);

    private IEnumerable<NestLayoutJson> Layouts(NestGroup group, Nest nest)
    {
        var lines = group.Problem.Lines.ToDictionary(line => line.Ref);
        return nest.Layouts.GroupBy(layout => layout.Stock.StockId, StringComparer.Ordinal)
            .SelectMany(ofItem => ofItem.Select((layout, i) => Layout($"{ofItem.Key}.{i + 1}", group, layout, lines)));
    }

    private NestLayoutJson Layout(string id, NestGroup group, BarLayout layout, Dictionary<PieceRef, OrderLine> lines) => new()
    {
        LayoutId = id,
        StockId = layout.Stock.StockId,
        Section = group.Section,
        Grade = group.Grade,
        Repeat = layout.Repeat,
        Bundle = CutBundleJson.Of(layout.Bundle),
        Cycles = layout.Bundle.IsSingle ? null : layout.Cycles,
        Heat = layout.Stock.Heat,
        Owner = layout.Stock.Owner,
        Plant = layout.Stock.Plant,
        TrimLength = _scale.Write(layout.Trim),
        KerfLength = _scale.Write(layout.KerfTotal),
        CutCount = CutCount.Of(layout, group.Problem.Rules.Kerf),
        Cuts = [.. layout.Cuts.Select(cut => Cut(cut, lines[cut.Piece]))],
        Remainder = new()
        {
            Length = _scale.Write(layout.Remainder.Length),
            Kind = WireEnum.Text(layout.Remainder.Kind),
            Value = _scale.WriteMicros(layout.Remainder.ValueMicros, _isMoney),
        },
    };

    private NestCutJson Cut(Cut cut, OrderLine line) => new()
    {
        PieceId = cut.Piece.LineId,
        Start = _scale.Write(cut.Start),
        End = _scale.Write(cut.End),
        AimedLength = line.WriteAimedLength(_scale),
        StartCut = cut.StartCut.ToJson(),
        EndCut = cut.EndCut.ToJson(),
        Turn = PieceTurnText.Of(cut.Turn),
        CenterlineLength = cut.StartCut.IsSquare && cut.EndCut.IsSquare ? null : _scale.Write(cut.Centerline),
    };

    private HashSet<string> Used() => AllLayouts.Select(layout => layout.Stock.StockId).ToHashSet(StringComparer.Ordinal);

    private List<ClaimJson> Claims()
    {
        var used = AllLayouts.GroupBy(layout => layout.Stock.StockId, StringComparer.Ordinal)
            .ToDictionary(ofItem => ofItem.Key, ofItem => ofItem.Sum(layout => layout.Repeat), StringComparer.Ordinal);
        return
        [
            .. request.Stock.Where(item => used.ContainsKey(item.StockId))
                .OrderBy(item => item.StockId, StringComparer.Ordinal)
                .Select(item => new ClaimJson
                {
                    StockId = item.StockId,
                    Quantity = used[item.StockId],
                    NominalLength = item.NominalLength,
                    Version = item.Version,
                    Attributes = item.Attributes,
                }),
        ];
    }

    private NestTotalsJson Totals() => new()
    {
        BarsUsed = AllLayouts.Sum(l => l.Repeat),
        CutCount = nests.Sum(n => n.Nest.Layouts.Sum(l => CutCount.Of(l, n.Group.Problem.Rules.Kerf) * l.Cycles)),
        StockLength = Sum(l => l.Stock.Length),
        PieceLength = Sum(PieceLength),
        KerfLength = Sum(l => l.KerfTotal),
        TrimLength = Sum(l => l.Trim),
        RemnantLength = Sum(l => Remainder(l, RemainderKind.Remnant)),
        ScrapLength = Sum(l => Remainder(l, RemainderKind.Scrap)),
        MaterialYield = Yield(),
    };

    private decimal Sum(Func<BarLayout, Length> length) =>
        _scale.Write(Length.FromNanometers(AllLayouts.Sum(layout => checked(length(layout).Nanometers * layout.Repeat))));

    private static Length PieceLength(BarLayout layout) => Length.FromNanometers(layout.Cuts.Sum(cut => cut.Centerline.Nanometers));

    private static Length Remainder(BarLayout layout, RemainderKind kind) => layout.Remainder.Kind == kind ? layout.Remainder.Length : Length.Zero;

    private decimal? Yield()
    {
        var weights = Weights();
        var (used, all) = (0m, 0m);
        foreach (var ((_, nest), weight) in nests.Zip(weights))
        {
            used += weight * nest.Layouts.Sum(l => l.Repeat * (PieceLength(l) + Remainder(l, RemainderKind.Remnant)).Meters);
            all += weight * nest.Layouts.Sum(l => l.Repeat * l.Stock.Length.Meters);
        }
        return all == 0 ? null : Math.Round(used / all, 4, MidpointRounding.ToEven);
    }

    /// <summary>Kilograms of a meter of each group; 1 for all where the catalog does not know one.</summary>
    private List<decimal> Weights()
    {
        var weights = nests.Select(n => KilogramsPerMeter(n.Group)).ToList();
        return [.. weights.Select(weight => weights.Contains(null) ? 1m : weight!.Value)];
    }

    private decimal? KilogramsPerMeter(NestGroup group) =>
        group is { Section: { } section, Grade: { } grade } && catalogs.FindSection(section) is { } shape && catalogs.FindGrade(grade) is { } material
            ? material.Density.Value.MassOf(shape.Area, Length.FromMillimeters(1000)).Kilograms
            : null;
}
