using SawEngine.Api.Features.Nests;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>Writes what was found of an edited nest, in the request's unit.</summary>
internal sealed class NestEvaluationAnswer(
    NestEvaluationRequest request, NestMaterials materials, EditedNest nest, EditedMaterials edited, IReadOnlyList<FoundViolation> violations, NestResponse? engine)
{
    private const int RatioDecimals = 6;

    private readonly LengthScale _scale = new(request.LengthUnit);
    private readonly HashSet<int?> _broken = [.. violations.Where(violation => violation.IsOfLayout).Select(violation => violation.Place.Layout)];

    public NestEvaluationResponse Write(OperationContext context) => new()
    {
        RequestDigest = context.RequestDigest,
        LengthUnit = WireEnum.Text(request.LengthUnit),
        IsClean = violations.Count == 0,
        Violations = [.. violations.Take(Limits.ViolationsReported).Select(violation => violation.ToJson())],
        ViolationCount = violations.Count,
        Value = Value,
        Layouts = Layouts(),
        Unplaced = [.. nest.Unplaced.Select(Unplaced)],
        Totals = Totals(),
        Comparison = engine is null ? null : Comparison(engine),
        Warnings = context.Warnings,
        Timing = new() { TotalMs = context.ElapsedMs },
    };

    private decimal Value => _scale.WriteMicros(nest.ValueMicros, request.IsCosted);

    private List<NestLayoutJson> Layouts()
    {
        var mapping = new NestLayoutMapping(_scale, request.IsCosted, nest.Problem);
        var broken = nest.Layouts.Where((_, i) => _broken.Contains(i)).Select(layout => layout.Json.LayoutId).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. nest.InSequence.Where(layout => !broken.Contains(layout.Json.LayoutId))
                .Select((layout, i) => mapping.ToJson(layout.Json.LayoutId, i + 1, edited.WrittenOfStock(layout.Json.StockId), layout.Booked))
                .OrderBy(layout => layout.LayoutId, StringComparer.Ordinal),
        ];
    }

    private static UnplacedPieceJson Unplaced(UnplacedPieces unplaced) => new()
    {
        PieceId = unplaced.Piece.LineId,
        Quantity = unplaced.Quantity,
        Reason = unplaced.Reason,
    };

    private NestTotalsJson Totals() => new NestTotals(
        request,
        materials,
        [],
        [.. nest.InSequence.Where(layout => layout.IsKnown).Select(layout => (edited.OfStock(layout.Json.StockId), layout.Booked))]).Write();

    private NestComparisonJson Comparison(NestResponse own) => new()
    {
        Status = own.Status,
        Objective = own.Objective,
        BarsUsed = own.Totals.BarsUsed,
        PiecesUnplaced = own.Unplaced.Sum(row => row.Quantity),
        Difference = Value - own.Objective.Value,
        Ratio = own.Objective.Value == 0 ? null : decimal.Round(Value / own.Objective.Value, RatioDecimals, MidpointRounding.ToEven),
        StoppedBy = own.StoppedBy,
    };
}
