using System.Numerics;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting;

/// <summary>Holds one layout against the rules that it must keep by itself. Lengths are nanometers, in decimal where they add up.</summary>
internal sealed class LayoutCheck(
    NestProblem problem,
    Dictionary<string, StockItem> offered,
    Dictionary<PieceRef, OrderLine> ordered,
    BarLayout layout,
    ViolationText text)
{
    /// <summary>A computed length may be up to one step of the published grid on the safe side.</summary>
    private const double GridStep = 12_700;

    /// <summary>What floating point may lose, in nanometers.</summary>
    private const double Noise = 2;

    /// <summary>The same in thousandths of a degree.</summary>
    private const double AngleNoise = 1e-6;

    private readonly CutRules _rules = problem.Rules;
    private readonly List<Violation> _violations = [];

    public IReadOnlyList<Violation> Run()
    {
        if (layout.Repeat < 1)
            Add(NestRule.Repeat, $"a repeat of {layout.Repeat}");
        if (!offered.TryGetValue(layout.Stock.StockId, out var stock) || stock != layout.Stock)
        {
            Add(NestRule.UnknownStock, "a bar that is not offered so");
            return _violations;
        }
        CheckConservation(stock);
        if (layout.Cuts.Count == 0)
        {
            Add(NestRule.EmptyLayout, "no piece");
            return _violations;
        }
        foreach (var cut in layout.Cuts)
            CheckPiece(stock, cut);
        CheckTransfer(stock);
        CheckStart(stock, layout.Cuts[0]);
        for (var i = 1; i < layout.Cuts.Count; i++)
            CheckGap(stock, layout.Cuts[i - 1], layout.Cuts[i]);
        CheckEnd(stock, layout.Cuts[^1]);
        CheckRemainder(stock);
        CheckZones(stock);
        CheckSaw(stock);
        foreach (var (code, what) in new BundleCheck(_rules, stock, layout, text).Run())
            Add(code, what);
        return _violations;
    }

    private void CheckConservation(StockItem stock)
    {
        decimal total = layout.Trim.Nanometers;
        foreach (var cut in layout.Cuts)
            total += cut.Centerline.Nanometers;
        total += (decimal)layout.KerfTotal.Nanometers + layout.Remainder.Length.Nanometers;
        if (total != stock.Length.Nanometers)
            Add(NestRule.Conservation, $"{Text(total)} of {Text(stock.Length.Nanometers)} booked");
        else if (layout.Cuts.Count > 0 && layout.Trim.Nanometers > Math.Max(layout.Cuts[0].Start.Nanometers, 0))
            Add(NestRule.Conservation, $"trim booked into {layout.Cuts[0].Piece}");
    }

    private void CheckPiece(StockItem stock, Cut cut)
    {
        if (!ordered.TryGetValue(cut.Piece, out var line))
        {
            Add(NestRule.UnknownPiece, $"{cut.Piece}, which is not ordered");
            return;
        }
        if (cut.Start.Nanometers < 0 || cut.End.Nanometers > stock.Length.Nanometers)
            Add(NestRule.OutsideBar, $"{cut.Piece} outside the bar");
        CheckTurn(stock, line, cut);
        CheckMaterial(stock, line);
        CheckLength(line, cut);
    }

    private void CheckTurn(StockItem stock, OrderLine line, Cut cut)
    {
        if (TurnedPiece.Of(cut.Turn) is not { } turned || !turned.Keeps(stock.Section))
            Add(NestRule.Turn, $"{cut.Piece}, turned {cut.Turn}");
        else if (!turned.Gives(line, cut))
            Add(NestRule.Miter, $"{cut.Piece} with other faces than ordered");
    }

    private void CheckMaterial(StockItem stock, OrderLine line)
    {
        if (stock.Section?.Designation != line.Section?.Designation)
            Add(NestRule.Section, $"{line.Ref}, ordered in {line.Section?.Designation}");
        if (stock.Grade?.Designation != line.Grade?.Designation && line.Substitutes.All(substitute => substitute.Designation != stock.Grade?.Designation))
            Add(NestRule.Grade, $"{line.Ref}, ordered in {line.Grade?.Designation}");
        if (stock.Owner is not null && stock.Owner != line.Owner)
            Add(NestRule.Owner, $"{line.Ref}, while the bar is owned by {stock.Owner}");
        if (LiesElsewhere(stock, line) && stock.ForeignPlantCostMicros is null)
            Add(NestRule.Plant, $"{line.Ref} for {line.Plant}, while the bar is in {stock.Plant}");
        if (stock.ReservedFor is { } reserved && !reserved.Any(id => id == (line.Ref.OrderId.Length > 0 ? line.Ref.OrderId : line.Ref.LineId)))
            Add(NestRule.Reserved, $"{line.Ref}, while the bar is reserved for {string.Join(", ", reserved)}");
        if (!Documents(line.Certificate).Contains(stock.Certificate))
            Add(NestRule.Certificate, $"{line.Ref}, ordered with {line.Certificate}");
        if (stock.Heat is null && line.HeatRule != HeatRule.Any)
            Add(NestRule.HeatUnknown, $"{line.Ref}, which wants a known heat");
        else if (stock.Heat is null && line.Certificate != Orders.Certificate.None)
            Add(NestRule.LostHeat, $"{line.Ref}, ordered with {line.Certificate}");
        else if (line.HeatRule == HeatRule.Named && stock.Heat != line.Heat)
            Add(NestRule.NamedHeat, $"{line.Ref}, ordered from heat {line.Heat}");
    }

    private static bool LiesElsewhere(StockItem stock, OrderLine line) => (stock.Plant, line.Plant) is ({ } there, { } needed) && there != needed;

    private void CheckTransfer(StockItem stock)
    {
        var cost = layout.Cuts.Any(cut => ordered.TryGetValue(cut.Piece, out var line) && LiesElsewhere(stock, line)) ? stock.ForeignPlantCostMicros ?? 0 : 0;
        if (layout.TransferCostMicros != cost)
            Add(NestRule.Transfer, $"{text.Value(layout.TransferCostMicros)} for bringing it to another plant, where that costs {text.Value(cost)}");
    }

    /// <summary>The documents that serve an order: EN 10204 types upward from the ordered one; a mill test report serves itself and no order for a type.</summary>
    private static Certificate[] Documents(Certificate orderedType) => orderedType switch
    {
        Certificate.None => [Certificate.None, Certificate.Type21, Certificate.Type22, Certificate.Type31, Certificate.Type32, Certificate.MillTestReport],
        Certificate.Type21 => [Certificate.Type21, Certificate.Type22, Certificate.Type31, Certificate.Type32],
        Certificate.Type22 => [Certificate.Type22, Certificate.Type31, Certificate.Type32],
        Certificate.Type31 => [Certificate.Type31, Certificate.Type32],
        _ => [orderedType],
    };

    private void CheckLength(OrderLine line, Cut cut)
    {
        var shape = PieceShape.Of(line);
        var booked = (decimal)cut.End.Nanometers - cut.Start.Nanometers;
        var aim = line.Length.Nanometers + decimal.Ceiling(((decimal)line.Tolerance.Plus.Nanometers - line.Tolerance.Minus.Nanometers) / 2m);
        if (!IsRounded(booked - aim, shape.OverallIsExact, shape.OverallBeyondOrder, GridStep))
            Add(NestRule.PieceLength, $"{cut.Piece}, {Text(booked)} long; ordered is {Text(aim + Rounded(shape.OverallBeyondOrder))}");
        if (!IsRounded(cut.Centerline.Nanometers - aim, shape.CenterlineIsExact, shape.CenterlineBeyondOrder, -GridStep))
            Add(NestRule.PieceLength, $"{cut.Piece}, {Text(cut.Centerline.Nanometers)} on its centerline; ordered is {Text(aim + Rounded(shape.CenterlineBeyondOrder))}");
        var shortSide = (double)aim + shape.ShortSideBeyondOrder;
        if (shortSide < Math.Max(_rules.ShortestPiece.Nanometers, 0) - Noise)
            Add(NestRule.ShortestPiece, $"{cut.Piece}, {Text(Rounded(shortSide))} on its short side; no piece is shorter than {Text(Math.Max(_rules.ShortestPiece.Nanometers, 0))}");
        if (_rules.LongestPiece is { } longest && booked > longest.Nanometers)
            Add(NestRule.LongestPiece, $"{cut.Piece}, {Text(booked)} long; no piece is longer than {Text(longest.Nanometers)}");
    }

    /// <summary>Whether a length is the ordered one itself, or beyond it by the true length on the grid, rounded by one step at most, up or down.</summary>
    private static bool IsRounded(decimal beyondOrder, bool isExact, double exact, double step)
    {
        var rounding = (double)beyondOrder - exact;
        return isExact ? beyondOrder == 0 : beyondOrder % (decimal)GridStep == 0 && rounding >= Math.Min(step, 0) - Noise && rounding <= Math.Max(step, 0) + Noise;
    }

    private void CheckStart(StockItem stock, Cut first)
    {
        var needed = RawTrim(stock);
        if (needed > 0 && first.Start.Nanometers == 0)
            Add(NestRule.RawStart, $"{first.Piece} on the raw start");
        else if (needed > 0 && (layout.Trim.Nanometers < needed || first.Start.Nanometers < needed))
            Add(NestRule.Trim, $"{Text(Math.Min(layout.Trim.Nanometers, first.Start.Nanometers))} of trim; the raw end needs {Text(needed)}");
        if (!first.StartCut.IsSquare)
            CheckSlice(first.Start.Nanometers, FaceTrigonometry.AlongBar(first.StartCut, _rules.Kerf), $"before {first.Piece}");
    }

    private void CheckGap(StockItem stock, Cut before, Cut after)
    {
        var where = $"between {before.Piece} and {after.Piece}";
        if (after.Start < before.Start)
            Add(NestRule.CutOrder, $"{after.Piece} listed behind {before.Piece}");
        else if (before.EndCut.IsSquare && after.StartCut.IsSquare)
            CheckSharedCut((double)((decimal)after.Start.Nanometers - before.End.Nanometers), _rules.Kerf.Nanometers, noise: 0, rounding: 0, where);
        else
            CheckMiters(stock, before, after, where);
    }

    /// <summary>Between two planes the distance along the bar is least, and most, at a corner of the section.</summary>
    private void CheckMiters(StockItem stock, Cut before, Cut after, string where)
    {
        var apart = Apart(stock.Section, before, after);
        var (least, most) = (apart.Min(), apart.Max());
        var (kerf, nextKerf) = (FaceTrigonometry.AlongBar(before.EndCut, _rules.Kerf), FaceTrigonometry.AlongBar(after.StartCut, _rules.Kerf));
        if (most - least <= Noise && Math.Abs(kerf - nextKerf) <= Noise)
            CheckSharedCut(least, kerf, Noise, 2 * GridStep, where);
        else if (least < -Noise)
            Add(NestRule.Overlap, $"no material {where}");
        else
            CheckSlice(least, kerf + nextKerf, where);
    }

    private static double[] Apart(Section? section, Cut before, Cut after) =>
        section is null ? [(double)((decimal)after.Start.Nanometers - before.End.Nanometers)] : Distances(section, before, after);

    /// <summary>How far the next piece's face lies behind the face of the piece before it, at each corner.</summary>
    private static double[] Distances(Section section, Cut before, Cut after)
    {
        var (face, nextFace) = (FaceTrigonometry.OffsetsAtCorners(before.EndCut, section), FaceTrigonometry.OffsetsAtCorners(after.StartCut, section));
        var (last, first) = (face.Max(), nextFace.Min());
        var gap = (double)((decimal)after.Start.Nanometers - before.End.Nanometers);
        return [.. face.Zip(nextFace, (end, start) => gap + (start - first) - (end - last))];
    }

    /// <summary>One kerf serves both faces; with more than two between them it is two cuts and a slice. Kerf and overlap may each be rounded.</summary>
    private void CheckSharedCut(double apart, double kerf, double noise, double rounding, string where)
    {
        if (apart < -noise)
            Add(NestRule.Overlap, $"no material {where}");
        else if (apart < kerf - noise)
            Add(NestRule.Kerf, $"{Text(Rounded(apart))} {where}; the kerf needs {Text(Rounded(kerf))}");
        else if (apart > 2 * kerf + noise + rounding)
            CheckSlice(apart, 2 * kerf, where);
    }

    /// <summary>What is left between two cuts, once each has taken its kerf.</summary>
    private void CheckSlice(double apart, double kerfs, string where)
    {
        var thickness = apart - kerfs;
        if (thickness < -Noise)
            Add(NestRule.Kerf, $"{Text(Rounded(apart))} {where}; the kerfs need {Text(Rounded(kerfs))}");
        else if (thickness < _rules.ThinnestSlice.Nanometers - Noise)
            Add(NestRule.Slice, $"a slice of {Text(Rounded(thickness))} {where}; none is thinner than {Text(_rules.ThinnestSlice.Nanometers)}");
    }

    private void CheckEnd(StockItem stock, Cut last)
    {
        var behind = (double)((decimal)stock.Length.Nanometers - last.End.Nanometers);
        if (stock.EndCondition != EndCondition.Sawn && behind < RawTrim(stock))
            Add(NestRule.RawEnd, $"{last.Piece}, {Text(Rounded(behind))} from the raw end; its trim needs {Text(RawTrim(stock))}");
        var left = behind - FaceTrigonometry.AlongBar(last.EndCut, _rules.Kerf);
        if (left < _rules.Tail.Nanometers - Noise && _rules.Tail.Nanometers > 0)
            Add(NestRule.Tail, $"{Text(Rounded(left))} behind the last kerf; the tail needs {Text(_rules.Tail.Nanometers)}");
        var booked = layout.Remainder.Length.Nanometers;
        // Where the last kerf runs out of the bar nothing is left; a rounded kerf may cost the remainder one step of the grid.
        var rounding = last.EndCut.IsSquare ? 0 : GridStep;
        if (booked < 0 || booked > Math.Max(left, 0) + Noise || booked < left - rounding - Noise)
            Add(NestRule.RemainderLength, $"a remainder of {Text(booked)} where {Text(Rounded(Math.Max(left, 0)))} is left");
    }

    private void CheckRemainder(StockItem stock)
    {
        var (length, kind, value) = layout.Remainder;
        // Under a limit, whether a long remainder may be scrap is a matter of the nest.
        var kept = IsLongEnough(problem, layout) && (kind == RemainderKind.Remnant || problem.Remnants!.MostNew is null);
        if (kind == RemainderKind.Remnant != (kept || IsKeptForOthers(stock)))
            Add(NestRule.RemainderKind, $"a remainder of {Text(length.Nanometers)} booked as {Named(kind)}; {WhatIsKept(stock)}");
        var worth = BigInteger.Min(ScrapWorth(stock, length.Nanometers), ShareOfCost(stock, length.Nanometers, 1m));
        if (kept)
            worth = BigInteger.Max(worth, RemnantWorth(problem.Remnants!, stock, length.Nanometers));
        // One millionth is left to the rounding of decimal quotients.
        if (value > worth + 1)
            Add(NestRule.RemainderValueHigh, $"a remainder worth {text.Value((decimal)worth)} booked at {text.Value(value)}");
        else if (value < worth - 1)
            Add(NestRule.RemainderValueLow, $"a remainder worth {text.Value((decimal)worth)} booked at {text.Value(value)}");
    }

    /// <summary>Whether a bar has a zone that is kept for another use.</summary>
    public static bool IsKeptForOthers(StockItem stock) => stock.Zones.Any(zone => zone.Kind == ZoneKind.Reserved);

    private void CheckZones(StockItem stock)
    {
        foreach (var zone in stock.Zones)
        {
            if (layout.Cuts.Any(cut => cut.Start.Nanometers < zone.To.Nanometers && cut.End.Nanometers > zone.From.Nanometers))
                Add(NestRule.PieceInZone, $"a piece in the zone from {Text(zone.From.Nanometers)} to {Text(zone.To.Nanometers)}");
            else if (zone.Kind == ZoneKind.Reserved && (decimal)stock.Length.Nanometers - layout.Remainder.Length.Nanometers > zone.From.Nanometers)
                Add(NestRule.ReservedZone, $"a cut in the zone from {Text(zone.From.Nanometers)} to {Text(zone.To.Nanometers)}, or a remainder that does not hold all of it");
        }
    }

    /// <summary>Whether the rules would keep a layout's remainder, were there no limit.</summary>
    public static bool IsLongEnough(NestProblem problem, BarLayout layout) =>
        problem.Remnants is { } rules && layout.Remainder.Length.Nanometers > 0 && layout.Remainder.Length.Nanometers >= rules.KeepFrom.Nanometers;

    /// <summary>The best of what it and all shorter remnants are worth, each class looked at where it is worth most: at its end.</summary>
    private static BigInteger RemnantWorth(RemnantRules rules, StockItem stock, long length)
    {
        (long From, decimal Fraction)[] classes = [(rules.KeepFrom.Nanometers, rules.ValueFraction), .. rules.Classes.Select(one => (one.From.Nanometers, one.ValueFraction))];
        return classes.Zip(classes.Skip(1).Select(next => next.From).Append(long.MaxValue), (one, end) => (one.From, one.Fraction, End: Math.Min(end, length)))
            .Where((one, i) => i == 0 || one.From <= length)
            .Max(one => ShareOfCost(stock, one.End, one.Fraction) - rules.HandlingCostMicros);
    }

    private static BigInteger ShareOfCost(StockItem stock, long length, decimal fraction)
    {
        var (numerator, denominator) = Ratio(fraction);
        return stock.CostMicros * numerator * length / (denominator * stock.Length.Nanometers);
    }

    private BigInteger ScrapWorth(StockItem stock, long length)
    {
        if (stock.Section is null || stock.Grade is null)
            return BigInteger.Zero;
        var (area, areaScale) = Ratio(stock.Section.Area.SquareMillimeters);
        var (density, densityScale) = Ratio(stock.Grade.Density.Value.KilogramsPerCubicMeter);
        // kg/m3 × mm2 × nm = 1e-15 kg.
        return problem.ScrapValueMicrosPerKilogram * area * density * length / (areaScale * densityScale * BigInteger.Pow(10, 15));
    }

    private static (BigInteger Numerator, BigInteger Denominator) Ratio(decimal value)
    {
        var scale = BigInteger.Pow(10, value.Scale);
        return (new BigInteger(value * (decimal)scale), scale);
    }

    /// <summary>One pass for each face, less those that two pieces share and those of faces that are the bar's own ends.</summary>
    public static int Passes(BarLayout layout, Quantities.Length kerf)
    {
        var cuts = layout.Cuts;
        var shared = cuts.Zip(cuts.Skip(1)).Count(pair => pair.First.EndCut == pair.Second.StartCut
            && Apart(layout.Stock.Section, pair.First, pair.Second).Min() <= FaceTrigonometry.AlongBar(pair.First.EndCut, kerf) + (pair.First.EndCut.IsSquare ? 0 : 2 * GridStep + Noise));
        var ownEnds = cuts.Count == 0 ? 0
            : (cuts[0].StartCut.IsSquare && cuts[0].Start.Nanometers <= 0 ? 1 : 0) + (cuts[^1].EndCut.IsSquare && cuts[^1].End >= layout.Stock.Length ? 1 : 0);
        return 2 * cuts.Count - shared - ownEnds;
    }

    private void CheckSaw(StockItem stock)
    {
        if (stock.Section is not { } section)
            return;
        if (_rules.LoadLimit is { } limit && stock.Grade is { } grade)
        {
            var kilograms = grade.Density.Value.KilogramsPerCubicMeter * section.Area.SquareMillimeters * stock.Length.Nanometers / 1e15m;
            if (kilograms > limit.Kilograms)
                Add(NestRule.LoadLimit, $"{kilograms:0.###} kg");
        }
        if (_rules.Capacity is { } capacity)
            CheckVise(section, capacity);
    }

    private void CheckVise(Section section, SawCapacity capacity)
    {
        var angles = layout.Cuts.SelectMany(cut => new[] { cut.StartCut, cut.EndCut })
            .Select(end => (Width: end.WidthAngle.Millidegrees, Height: end.HeightAngle.Millidegrees)).Distinct().ToList();
        var lying = Enumerable.Range(0, 4).Select(quarters => new Position(quarters, capacity, section)).ToList();
        if (!lying.Any(position => position.HoldsSquare))
            Add(NestRule.Capacity, section.Designation);
        else if (_rules.MiterRange is not { Tilts: true } && !lying.Any(position => angles.All(angle => position.Across(angle) == 0)))
            Add(NestRule.MiterPlane, "miters in more than one plane");
        else
        {
            var reaching = lying.Where(position => angles.All(angle => Reaches(position.Along(angle), position.Across(angle)))).ToList();
            if (reaching.Count == 0)
                Add(NestRule.MiterRange, "miters beyond what the saw swivels and tilts, however the bar lies");
            else if (!reaching.Any(position => angles.All(position.Holds)))
                Add(NestRule.Capacity, $"{section.Designation}, mitered");
        }
    }

    /// <summary>Whether the saw swivels, and then tilts, to a face with these angles as the bar lies.</summary>
    private bool Reaches(int along, int across) =>
        IsWithin(along, _rules.MiterRange?.Left, _rules.MiterRange?.Right)
        && IsWithin(FaceTrigonometry.Tilt(along, across), _rules.MiterRange?.TiltToFirstEnd, _rules.MiterRange?.TiltToSecondEnd);

    private static bool IsWithin(double millidegrees, Angle? negative, Angle? positive) =>
        Math.Abs(millidegrees) <= AngleNoise + ((millidegrees < 0 ? negative : positive)?.Millidegrees ?? 0);

    private long RawTrim(StockItem stock) =>
        stock.EndCondition == EndCondition.Sawn || !_rules.Trim.TryGetValue(stock.EndCondition, out var trim) ? 0 : trim.Nanometers;

    private string WhatIsKept(StockItem stock) =>
        IsKeptForOthers(stock) ? "a reserved zone makes it a remnant"
        : problem.Remnants is { } rules ? $"remnants are kept from {Text(rules.KeepFrom.Nanometers)}"
        : "no remnants are kept";

    private static string Named(RemainderKind kind) => kind == RemainderKind.Remnant ? "remnant" : "scrap";

    private string Text(decimal nanometers) => text.Length(nanometers);

    private static decimal Rounded(double nanometers) => (decimal)Math.Round(nanometers, 0, MidpointRounding.ToEven);

    private void Add(string code, string what) => _violations.Add(new(code, $"Layout {text.LayoutName ?? "of " + layout.Stock.StockId}: {what}."));

    /// <summary>How the bar lies: turned by some quarters clockwise, seen from first to second end, so that its top comes to the right.</summary>
    private sealed record Position(int Quarters, SawCapacity Capacity, Section Section)
    {
        private bool IsUpright => Quarters is 0 or 2;

        /// <summary>The angle in the plane in which the saw swivels. Half a turn exchanges left and right.</summary>
        public int Along((int Width, int Height) angle) => (IsUpright ? angle.Width : angle.Height) * (Quarters < 2 ? 1 : -1);

        /// <summary>The angle in the other plane, in which a saw may tilt.</summary>
        public int Across((int Width, int Height) angle) => (IsUpright ? angle.Height : angle.Width) * (Quarters is 0 or 3 ? 1 : -1);

        public bool HoldsSquare => Holds((0, 0));

        public bool Holds((int Width, int Height) angle)
        {
            var (alongBlade, upright) = IsUpright
                ? (Section.Width.Nanometers, Section.Height.Nanometers)
                : (Section.Height.Nanometers, Section.Width.Nanometers);
            var mitered = alongBlade / FaceTrigonometry.Cosine(Along(angle));
            var travel = upright / FaceTrigonometry.Cosine(FaceTrigonometry.Tilt(Along(angle), Across(angle)));
            return Section.Shape is SectionShape.Round or SectionShape.RoundTube or SectionShape.Pipe
                ? Math.Max(mitered, travel) <= Capacity.Round.Nanometers + Noise
                : mitered <= Capacity.Width.Nanometers + Noise && travel <= Capacity.Height.Nanometers + (travel > upright ? Noise : 0);
        }
    }
}
