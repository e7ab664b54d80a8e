using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Planning;
using SawEngine.Core.Times;

namespace SawEngine.Api.Features.Estimates;

/// <summary>Writes an estimate.</summary>
internal sealed class EstimateAnswer(EstimateRequest request, EstimateMapping mapping, Plan whole, ILookup<string, (int Quantity, Plan Plan)> alone)
{
    private readonly Dictionary<string, OrderLineJson> _asked = request.Order.Lines.ToDictionary(line => line.LineId, StringComparer.Ordinal);
    private readonly Dictionary<string, string> _saws = whole.Jobs.ToDictionary(job => job.Scheduled.JobId, job => job.Scheduled.SawId, StringComparer.Ordinal);

    public EstimateResponse Write(OperationContext context)
    {
        context.Warnings.AddRange(whole.Warnings.Select(warning => new WarningJson { Code = warning.Code, Detail = warning.Detail }).Distinct());
        context.Warnings.AddRange(SubstituteUses.Warnings(whole.Layouts.Select(layout => layout.Layout), mapping.Materials, SubstituteUses.LinesOf(request.Order)));
        var lines = whole.Orders.Single().Lines;
        return new()
        {
            RequestDigest = context.RequestDigest,
            LengthUnit = WireEnum.Text(request.LengthUnit),
            Currency = request.Currency,
            Status = WireEnum.Text(whole.Status),
            OrderId = request.Order.OrderId,
            Totals = Totals(lines),
            Lines = [.. lines.Select(Line)],
            Unplaced = [.. whole.Unplaced.Concat(Unscheduled()).Select(UnplacedLineJson.Of)],
            StockUsed = [.. whole.Claims.Select(claim => new StockUseJson { StockId = claim.StockId, Quantity = claim.Quantity })],
            Cautions = [.. whole.Cautions.Select(CautionJson.Of)],
            Defaults = mapping.Defaults,
            StoppedBy = WireEnum.Text(context.Cancellation.IsCancellationRequested ? StoppedBy.TimeLimit : whole.StoppedBy),
            Warnings = context.Warnings,
            Timing = new() { TotalMs = context.ElapsedMs },
        };
    }

    private EstimateTotalsJson Totals(IReadOnlyList<PlannedLine> lines)
    {
        var time = whole.Jobs.Select(job => job.Time).Aggregate(TimeParts.Zero, (sum, job) => sum + job);
        return new()
        {
            PiecesOrdered = lines.Sum(line => line.Line.Quantity),
            PiecesPlanned = lines.Sum(line => line.Planned),
            BarsUsed = whole.BarsUsed,
            MaterialYield = decimal.Round(whole.MaterialYield, 4, MidpointRounding.ToEven),
            Seconds = JobSecondsJson.Of(whole.Jobs.Sum(job => job.SetUpSeconds), time),
            Cost = whole.Cost.Amount,
        };
    }

    private EstimatedLineJson Line(PlannedLine line) => new()
    {
        LineId = line.Line.Ref.LineId,
        Quantity = line.Line.Quantity,
        Planned = line.Planned,
        SawIds = [.. line.JobIds.Select(job => _saws[job]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
        Seconds = line.Seconds,
        Cost = Cost(line),
        CostPerPiece = line.CostPerPiece(),
        PriceBreaks = [.. alone[line.Line.Ref.LineId].Select(one => PriceBreak(one.Quantity, one.Plan.Orders.Single().Lines.Single()))],
        Attributes = _asked[line.Line.Ref.LineId].Attributes,
    };

    private PriceBreakJson PriceBreak(int quantity, PlannedLine line) => new()
    {
        Quantity = quantity,
        Planned = line.Planned,
        Seconds = line.Seconds,
        Cost = Cost(line),
        CostPerPiece = line.CostPerPiece(),
    };

    private LineCostJson Cost(PlannedLine line) => LineCostJson.Of(line.Cost, mapping.Problem.StockIsCosted);

    /// <summary>Pieces that are on bars, but on no saw.</summary>
    private IEnumerable<UnplacedPieces> Unscheduled() =>
        from job in whole.Unscheduled
        from layout in whole.Layouts
        where layout.JobId == job.JobId
        from cut in layout.Layout.Cuts
        group layout.Layout.Repeat by (cut.Piece, job.Reason) into pieces
        orderby pieces.Key.Piece, pieces.Key.Reason
        select new UnplacedPieces(pieces.Key.Piece, pieces.Sum(), pieces.Key.Reason);
}
