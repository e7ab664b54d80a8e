using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.ReferenceData;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Cautions;
using SawEngine.Core.CuttingData;
using SawEngine.Core.Grades;
using SawEngine.Core.Nesting;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;

namespace SawEngine.Api.Features.CuttingData;

/// <summary>Compares the saws for each cut and writes what comes out in the units of the request; the rules have passed.</summary>
internal sealed class CuttingDataAnswer
{
    private readonly CuttingDataRequest _request;
    private readonly LengthScale _scale;
    private readonly Materials _materials;
    private readonly IReadOnlyList<SawMapping> _saws;
    private readonly bool _inches;

    public CuttingDataAnswer(CuttingDataRequest request)
    {
        _request = request;
        _scale = new(request.LengthUnit);
        _materials = new(request.Sections, request.Grades, _scale);
        _saws = request.Shop.ToSaws(_scale);
        _inches = request.LengthUnit == LengthUnit.In;
    }

    public CuttingDataResponse Write(OperationContext context)
    {
        var compared = _request.Cuts.OrderBy(cut => cut.CutId, StringComparer.Ordinal).Select(cut => new ComparedCut(cut, Compare(cut, context.Cancellation))).ToList();
        var possible = compared.Count(cut => cut.Comparison.Possible.Count > 0);
        var cautions = NumberedCautions.Of(compared.SelectMany(cut => cut.Comparison.Possible).SelectMany(onSaw => onSaw.Cautions));
        context.Warnings.AddRange(_materials.AmbiguousGrades(_request.Cuts.Select((cut, i) => ((string?)cut.Grade, $"#/cuts/{i}/grade"))));
        context.Warnings.AddRange(compared.SelectMany(WarningsOf));
        return new()
        {
            RequestDigest = context.RequestDigest,
            LengthUnit = WireEnum.Text(_request.LengthUnit),
            Status = Completion.Text(possible, compared.Count),
            Results = [.. compared.SelectMany(cut => ResultsOf(cut, cautions))],
            NotPossible = [.. compared.SelectMany(NotPossible)],
            Grades = [.. GradesOf(compared).Select(GradeItemJson.Of)],
            Cautions = [.. cautions.All.Select(CautionJson.Of)],
            Defaults = _saws.ToDefaults(_scale),
            Warnings = context.Warnings,
            Timing = new() { TotalMs = context.ElapsedMs },
        };
    }

    private CutComparison Compare(WantedCutJson cut, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        var saws = _saws.Select(mapped => mapped.Saw).Where(saw => cut.SawIds?.Contains(saw.SawId, StringComparer.Ordinal) ?? true);
        return _request.CompareBlades && cut.BladeId is null ? CutComparison.OverBlades(WantedOf(cut), saws) : CutComparison.Of(WantedOf(cut), saws);
    }

    private WantedCut WantedOf(WantedCutJson cut) => new()
    {
        Section = _materials.Section(cut.Section)!,
        Grade = _materials.Grade(cut.Grade)!,
        Face = cut.Face.ToEndCut(),
        Bundle = BundleOf(cut),
        BladeId = cut.BladeId,
        Squareness = _scale.Read(cut.Squareness),
        PieceLength = cut.Piece is { } piece ? _scale.Read(piece) : null,
        Tolerance = cut.Piece?.Tolerance?.ToTolerance(_scale),
    };

    private static CutBundle BundleOf(WantedCutJson cut) => cut.Bundle is { } bundle ? CutBundle.Full(bundle.Wide, bundle.High) : CutBundle.Single;

    private IEnumerable<Grade> GradesOf(List<ComparedCut> compared) => compared
        .Where(cut => cut.Comparison.Possible.Count > 0)
        .Select(cut => _materials.Grade(cut.Wanted.Grade)!)
        .DistinctBy(grade => grade.Designation)
        .OrderBy(grade => grade.Designation, StringComparer.Ordinal);

    private IEnumerable<CutResultJson> ResultsOf(ComparedCut cut, NumberedCautions cautions) =>
        cut.Comparison.Possible.Select((onSaw, i) => Result(cut.Wanted, onSaw, i + 1, cautions.IdsOf(onSaw.Cautions)));

    private CutResultJson Result(WantedCutJson wanted, CutOnSaw onSaw, int rank, IReadOnlyList<string> cautionIds)
    {
        var (data, blade) = (onSaw.Data, onSaw.Choice.Blade);
        return new()
        {
            CutId = wanted.CutId,
            SawId = onSaw.Saw.SawId,
            Rank = rank,
            Section = _materials.Section(wanted.Section)!.Designation,
            Grade = _materials.Grade(wanted.Grade)!.Designation,
            Bundle = CutBundleJson.Of(BundleOf(wanted)),
            BladeId = blade.BladeId,
            TeethPerInch = TeethPerInch(blade),
            Kerf = _scale.Write(blade.Kerf),
            QuarterTurns = onSaw.Choice.Lay.QuarterTurns,
            BladeSpeedMPerMin = data.BladeSpeed.MetersPerMinute,
            BladeSpeedFtPerMin = _inches ? CustomaryUnits.FeetPerMinute(data.BladeSpeed.MetersPerMinute) : null,
            CuttingRateCm2PerMin = data.CuttingRate.SquareCentimetersPerMinute,
            CuttingRateIn2PerMin = _inches ? CustomaryUnits.SquareInchesPerMinute(data.CuttingRate.SquareCentimetersPerMinute) : null,
            BladeFeedMmPerMin = data.BladeFeedMillimetersPerMinute,
            BladeFeedInPerMin = _inches ? CustomaryUnits.InchesPerMinute(data.BladeFeedMillimetersPerMinute) : null,
            PowerKw = data.PowerKilowatts,
            PowerHp = _inches ? CustomaryUnits.Horsepower(data.PowerKilowatts) : null,
            LimitedBy = WireEnum.Text(data.LimitedBy),
            TeethInWork = TeethInWorkJson.Of(data.TeethInWork),
            AreaMm2 = data.CutArea.SquareMillimeters,
            AreaIn2 = _inches ? CustomaryUnits.SquareInches(data.CutArea.SquareMillimeters) : null,
            SecondsPerCut = data.CutSeconds,
            CycleSeconds = onSaw.Cycle is { } cycle ? CutCycleJson.Of(onSaw.LengthAccuracy!.Strokes, cycle) : null,
            LengthAccuracy = onSaw.LengthAccuracy is { } accuracy ? LengthAccuracyJson.Of(accuracy, _scale) : null,
            OutOfSquare = _scale.Write(data.OutOfSquare),
            HoldsSquareness = onSaw.HoldsSquareness,
            BendingStressMpa = onSaw.Saw.WheelDiameter is { } wheel ? decimal.Round(BladeStress.BendingMegapascals(blade.Thickness, wheel), 1, MidpointRounding.ToEven) : null,
            WheelDiameterPerThickness = onSaw.Saw.WheelDiameter is { } diameter
                ? decimal.Round(diameter.Nanometers / (decimal)blade.Thickness.Nanometers, 1, MidpointRounding.ToEven) : null,
            BreakIn = BreakInJson.Of(data.BreakIn),
            BladeLifeM2 = SourcedValueJson.Of(data.BladeLifeSquareMeters, life => life),
            BladeLifeShare = data.BladeLifeBillionths / 1_000_000_000m,
            CutsPerBlade = data.CutsPerBlade,
            CutsLeft = data.CutsLeft(blade.RemainingLife),
            BladesNeeded = (int)((wanted.Quantity + data.CutsPerBlade - 1) / data.CutsPerBlade),
            Factors = [.. data.Factors.Select(Factor)],
            RejectedBlades = [.. onSaw.Choice.Rejected.Select(Rejected)],
            CautionIds = cautionIds,
            Attributes = wanted.Attributes,
        };
    }

    private static decimal[] TeethPerInch(Blade blade) => blade.CoarsestTeethPerInch == blade.FinestTeethPerInch
        ? [blade.CoarsestTeethPerInch]
        : [blade.CoarsestTeethPerInch, blade.FinestTeethPerInch];

    private static CutFactorJson Factor(AppliedFactor factor) => new()
    {
        Name = factor.Code,
        Value = factor.Value,
        Source = factor.Source,
        Confidence = WireEnum.Text(factor.Confidence),
    };

    private static RejectedBladeJson Rejected(RejectedBlade rejected) => new()
    {
        BladeId = rejected.BladeId,
        Reason = rejected.Code,
        Detail = rejected.Detail,
    };

    private IEnumerable<CutNotPossibleJson> NotPossible(ComparedCut cut) => cut.Comparison.Refused.Select(refusal => new CutNotPossibleJson
    {
        CutId = cut.Wanted.CutId,
        SawId = refusal.SawId,
        BladeId = refusal.BladeId,
        Reason = refusal.Obstacle.Code,
        Detail = FitText(cut.Wanted, refusal) ?? refusal.Obstacle.Detail,
        Attributes = cut.Wanted.Attributes,
    });

    /// <summary>What the section and the angle are and what the saw takes, in the unit of the request; null where something else is in the way.</summary>
    private string? FitText(WantedCutJson cut, CutRefusal refusal)
    {
        var (section, saw) = (_materials.Section(cut.Section)!, _saws.First(mapped => mapped.Saw.SawId == refusal.SawId).Saw);
        return refusal.Obstacle.Code switch
        {
            SawFit.Capacity when section.IsRound =>
                $"Section {section.Designation} is {Text(section.Width)} in diameter{AtAngle(cut)}; saw {saw.SawId} takes rounds up to {Text(saw.Capacity.Round)}.",
            SawFit.Capacity =>
                $"Section {section.Designation} is {Text(section.Width)} wide and {Text(section.Height)} high{AtAngle(cut)}; "
                + $"saw {saw.SawId} takes {Text(saw.Capacity.Width)} wide and {Text(saw.Capacity.Height)} high.",
            SawFit.MiterRange when saw.MiterRange is { } range =>
                $"The cut is inclined by {AnglesOf(cut)}; saw {saw.SawId} swivels to {range.Left} on the left (negative) and {range.Right} on the right"
                + (range.Tilts ? $", and then tilts to {range.TiltToFirstEnd} toward the first end (negative) and {range.TiltToSecondEnd} toward the second." : "."),
            SawFit.CompoundMiter => $"The cut is inclined by {AnglesOf(cut)}; saw {saw.SawId} does not tilt.",
            BundleFit.TooManyBars when saw.Bundle is null => $"Saw {saw.SawId} clamps single bars only: it states no `bundle`.",
            UnplacedReason.PieceTooShort => $"The piece is {Text(_scale.Read(cut.Piece!))} long; saw {saw.SawId} cuts none under {Text(saw.ShortestPiece)}.",
            UnplacedReason.PieceTooLong => $"The piece is {Text(_scale.Read(cut.Piece!))} long; saw {saw.SawId} takes {Text(saw.LongestPiece!.Value)} at most.",
            SawFit.MiterRange => $"The cut is inclined by {AnglesOf(cut)}; saw {saw.SawId} cuts square only.",
            _ => null,
        };
    }

    private string Text(Length length) => _scale.Text(length.Nanometers);

    private static string AtAngle(WantedCutJson cut) => cut.Face.ToEndCut().IsSquare ? "" : $", and longer by 1/cos a in the plane of the angle where it is cut at {AnglesOf(cut)}";

    private static string AnglesOf(WantedCutJson cut)
    {
        var face = cut.Face.ToEndCut();
        return string.Join(" and ", new[] { (face.HeightAngle, "in the plane of the height"), (face.WidthAngle, "in the plane of the width") }
            .Where(angle => angle.Item1 != Angle.Zero).Select(angle => $"{angle.Item1} {angle.Item2}"));
    }

    private static IEnumerable<WarningJson> WarningsOf(ComparedCut cut) => cut.Comparison.Possible.SelectMany(
        onSaw => onSaw.Data.Warnings,
        (onSaw, warning) => new WarningJson { Code = warning.Code, CutId = cut.Wanted.CutId, SawId = onSaw.Saw.SawId, Detail = warning.Detail });

    private sealed record ComparedCut(WantedCutJson Wanted, CutComparison Comparison);
}
