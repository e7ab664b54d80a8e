using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.CuttingData;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Planning;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Api.Features.Plans;

/// <summary>Writes a plan in the units of its request.</summary>
internal sealed class PlanAnswer(PlanRequest request, PlanMapping mapping, Plan plan)
{
    private readonly Dictionary<string, OrderJson> _orders = request.Orders.ToDictionary(order => order.OrderId, StringComparer.Ordinal);
    private readonly Dictionary<PieceRef, OrderLine> _lines = mapping.Problem.Orders.SelectMany(order => order.Lines).ToDictionary(line => line.Ref);
    private readonly Dictionary<string, JobExplanation> _explained = plan.Explanation.Jobs.ToDictionary(job => job.JobId, StringComparer.Ordinal);
    private readonly Dictionary<string, LateDelivery> _late = plan.Explanation.Late.ToDictionary(late => late.DeliveryId, StringComparer.Ordinal);
    private readonly bool _inches = request.LengthUnit == LengthUnit.In;

    public PlanResponse Write(OperationContext context)
    {
        context.Warnings.AddRange(plan.Warnings.Select(Warning));
        var used = plan.Claims.Select(claim => claim.StockId).ToHashSet(StringComparer.Ordinal);
        context.Warnings.AddRange(NominalLength.Warnings(request.Stock, item => item.StockId, item => item.NominalLength, used, mapping.Scale));
        context.Warnings.AddRange(SubstituteUses.Warnings(plan.Layouts.Select(layout => layout.Layout), mapping.Materials, SubstituteUses.LinesOf(request.Orders)));
        return new()
        {
            RequestDigest = context.RequestDigest,
            LengthUnit = WireEnum.Text(request.LengthUnit),
            Currency = request.Currency,
            TimeZone = request.TimeZone,
            Status = WireEnum.Text(plan.Status),
            Totals = Totals(),
            Orders = [.. plan.Orders.Select(Order)],
            Jobs = [.. plan.Jobs.Select(Job)],
            Layouts = [.. plan.Layouts.Select(Layout)],
            Nests = [.. plan.Nests.Select(Nest)],
            Unplaced = [.. plan.Unplaced.Select(UnplacedLineJson.Of)],
            Unscheduled = [.. plan.Unscheduled.Select(job => new UnscheduledJson { JobId = job.JobId, Reason = job.Reason })],
            Cautions = [.. plan.Cautions.Select(CautionJson.Of)],
            Claims = Claims(),
            Defaults = mapping.Defaults,
            StoppedBy = WireEnum.Text(context.Cancellation.IsCancellationRequested ? StoppedBy.TimeLimit : plan.StoppedBy),
            Warnings = context.Warnings,
            Timing = new() { TotalMs = context.ElapsedMs },
        };
    }

    private PlanTotalsJson Totals() => new()
    {
        PiecesOrdered = plan.Orders.Sum(order => order.Lines.Sum(line => line.Line.Quantity)),
        PiecesPlanned = plan.Orders.Sum(order => order.Lines.Sum(line => line.Planned)),
        BarsUsed = plan.BarsUsed,
        MaterialYield = Rounded(plan.MaterialYield, 4),
        LateOrders = plan.Orders.Count(order => order.SecondsLate > 0),
        Finish = At(plan.Finish),
        Cost = plan.Cost.Amount,
    };

    private PlanOrderJson Order(PlannedOrder order)
    {
        var asked = _orders[order.Order.OrderId];
        var lines = asked.Lines.ToDictionary(line => line.LineId, StringComparer.Ordinal);
        return new()
        {
            OrderId = asked.OrderId,
            Due = order.Order.Due is { } due ? mapping.Clock.InZone(due) : null,
            Finish = At(order.Finish),
            LateHours = order.Order.Due is null ? null : Rounded(order.SecondsLate / 3600m, 4),
            Lateness = _late.GetValueOrDefault(asked.OrderId) is { } late ? LatenessJson.Of(late) : null,
            Cost = order.Cost.Amount,
            Lines = [.. order.Lines.Select(line => Line(line, lines[line.Line.Ref.LineId]))],
            Attributes = asked.Attributes,
        };
    }

    private PlanLineJson Line(PlannedLine line, OrderLineJson asked) => new()
    {
        LineId = asked.LineId,
        Quantity = line.Line.Quantity,
        Planned = line.Planned,
        Finish = At(line.Finish),
        JobIds = line.JobIds,
        Cost = LineCostJson.Of(line.Cost, mapping.Problem.StockIsCosted),
        CostPerPiece = line.CostPerPiece(),
        Attributes = asked.Attributes,
    };

    private CuttingJobJson Job(PlannedJob job) => new()
    {
        JobId = job.Scheduled.JobId,
        SawId = job.Scheduled.SawId,
        Sequence = job.Scheduled.Sequence,
        Section = job.Section,
        QuarterTurns = job.Lay.QuarterTurns,
        Grade = job.Grade,
        BladeId = job.BladeId,
        Bundle = CutBundleJson.Of(job.Bundle),
        SetUps = job.Scheduled.ToSetUps(mapping.Clock),
        Start = mapping.Clock.At(job.Scheduled.Start),
        Finish = mapping.Clock.At(job.Scheduled.Finish),
        Work = job.Scheduled.ToWork(mapping.Clock),
        WaitsFor = JobWaitJson.Of(_explained[job.Scheduled.JobId].WaitsFor),
        SawChoice = SawChoiceJson.Of(_explained[job.Scheduled.JobId]),
        Cutting = Cutting(job.Square, job.Mitered),
        Seconds = JobSecondsJson.Of(job.SetUpSeconds, job.Time),
        CautionIds = job.CautionIds,
    };

    private CuttingJson Cutting(CutData square, CutData? mitered) => new()
    {
        BladeSpeedMPerMin = square.BladeSpeed.MetersPerMinute,
        BladeSpeedFtPerMin = _inches ? CustomaryUnits.FeetPerMinute(square.BladeSpeed.MetersPerMinute) : null,
        CuttingRateCm2PerMin = square.CuttingRate.SquareCentimetersPerMinute,
        CuttingRateIn2PerMin = _inches ? CustomaryUnits.SquareInchesPerMinute(square.CuttingRate.SquareCentimetersPerMinute) : null,
        BladeFeedMmPerMin = square.BladeFeedMillimetersPerMinute,
        BladeFeedInPerMin = _inches ? CustomaryUnits.InchesPerMinute(square.BladeFeedMillimetersPerMinute) : null,
        PowerKw = square.PowerKilowatts,
        PowerHp = _inches ? CustomaryUnits.Horsepower(square.PowerKilowatts) : null,
        LimitedBy = WireEnum.Text(square.LimitedBy),
        TeethInWork = TeethInWorkJson.Of(square.TeethInWork),
        SecondsPerCut = square.CutSeconds,
        SecondsPerMiteredCut = mitered?.CutSeconds,
    };

    private LayoutJson Layout(PlannedLayout layout) => new()
    {
        LayoutId = layout.LayoutId,
        JobId = layout.JobId,
        Sequence = layout.Sequence,
        StockId = layout.Layout.Stock.StockId,
        Grade = layout.Layout.Stock.Grade!.Designation,
        SawIds = layout.SawIds,
        Repeat = layout.Layout.Repeat,
        Bundle = CutBundleJson.Of(layout.Layout.Bundle),
        Cycles = layout.Layout.Bundle.IsSingle ? null : layout.Layout.Cycles,
        Heat = layout.Layout.Stock.Heat,
        Certificate = layout.Layout.Stock.Certificate.ToJson() is { } certificate ? WireEnum.Text(certificate) : null,
        Owner = layout.Layout.Stock.Owner,
        Plant = layout.Layout.Stock.Plant,
        TrimLength = mapping.Scale.Write(layout.Layout.Trim),
        KerfLength = mapping.Scale.Write(layout.Layout.KerfTotal),
        Cuts = [.. layout.Layout.Cuts.Select(Cut)],
        Remainder = Remainder(layout),
    };

    private LayoutCutJson Cut(Cut cut) => new()
    {
        OrderId = cut.Piece.OrderId,
        LineId = cut.Piece.LineId,
        Start = mapping.Scale.Write(cut.Start),
        End = mapping.Scale.Write(cut.End),
        AimedLength = _lines[cut.Piece].WriteAimedLength(mapping.Scale),
        StartCut = cut.StartCut.ToJson(),
        EndCut = cut.EndCut.ToJson(),
        Turn = PieceTurnText.Of(cut.Turn),
        CenterlineLength = cut.StartCut.IsSquare && cut.EndCut.IsSquare ? null : mapping.Scale.Write(cut.Centerline),
    };

    private LayoutRemainderJson Remainder(PlannedLayout layout)
    {
        var mass = layout.RemainderMass!.Value.Kilograms;
        return new()
        {
            Length = mapping.Scale.Write(layout.Layout.Remainder.Length),
            Kind = WireEnum.Text(layout.Layout.Remainder.Kind),
            StartCut = layout.Layout.Cuts[^1].EndCut.ToJson(),
            MassKg = Rounded(mass, 3),
            MassLb = _inches ? CustomaryUnits.Pounds(mass) : null,
            Value = mapping.Problem.StockIsCosted ? Rounded(layout.Layout.Remainder.ValueMicros / 1_000_000m, 2) : null,
            RemnantId = layout.RemnantId,
        };
    }

    private PlanNestJson Nest(PlannedNest nest) => new()
    {
        Section = nest.Section,
        Grade = nest.Grade,
        JoinedGrades = nest.JoinedGrades.Count == 0 ? null : nest.JoinedGrades,
        LayoutIds = nest.LayoutIds,
        Status = WireEnum.Text(nest.Status),
        Objective = new()
        {
            Value = mapping.Scale.WriteMicros(nest.ValueMicros, mapping.Problem.StockIsCosted),
            Bound = mapping.Scale.WriteMicros(nest.BoundMicros, mapping.Problem.StockIsCosted),
            Gap = Gap.Of(nest.ValueMicros, nest.BoundMicros),
        },
        StoppedBy = WireEnum.Text(nest.StoppedBy),
    };

    private List<ClaimJson> Claims()
    {
        var items = request.Stock.ToDictionary(item => item.StockId, StringComparer.Ordinal);
        return [.. plan.Claims.Select(claim => Claim(claim, items[claim.StockId]))];
    }

    private static ClaimJson Claim(Claim claim, StockItemJson item) => new()
    {
        StockId = claim.StockId,
        Quantity = claim.Quantity,
        NominalLength = item.NominalLength,
        Version = item.Version,
        Attributes = item.Attributes,
    };

    private static WarningJson Warning(Warning warning) => new()
    {
        Code = warning.Code,
        Detail = warning.Detail,
        JobId = warning.JobId,
        OrderId = warning.OrderId,
    };

    private DateTimeOffset? At(long? seconds) => seconds is { } known ? mapping.Clock.At(known) : null;

    private static decimal Rounded(decimal value, int decimals) => Math.Round(value, decimals, MidpointRounding.ToEven);
}
