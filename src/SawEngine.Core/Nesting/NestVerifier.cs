using System.Collections.Frozen;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting;

/// <summary>
/// Holds a nest against the rules of the trade. It shares no arithmetic and no geometry with what lays, costs and nests:
/// all is derived again from the definitions, so that an error there is found here.
/// </summary>
public static class NestVerifier
{
    private static readonly FrozenSet<string> Reasons = new[]
    {
        UnplacedReason.NoStock, UnplacedReason.NoCertificate, UnplacedReason.NoHeat, UnplacedReason.LongerThanEveryBar,
        UnplacedReason.StockUsedUp, UnplacedReason.NoSingleHeat, UnplacedReason.NoSawHoldsSection, UnplacedReason.NoSawCutsMiter,
        UnplacedReason.PieceTooShort, UnplacedReason.PieceTooLong, UnplacedReason.BarTooHeavy, UnplacedReason.NoBladeCuts,
        UnplacedReason.NotVerified, UnplacedReason.UnderAccepted,
        UnplacedReason.OtherOwner, UnplacedReason.OtherPlant, UnplacedReason.Reserved,
        UnplacedReason.HigherPriority,
    }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>All rules that a nest breaks; empty where it is clean.</summary>
    public static IReadOnlyList<Violation> Verify(NestProblem problem, Nest nest)
    {
        var offered = problem.Stock.ToDictionary(item => item.StockId, StringComparer.Ordinal);
        var ordered = problem.Lines.ToDictionary(line => line.Ref);
        var violations = new List<Violation>();
        foreach (var layout in nest.Layouts)
            violations.AddRange(new LayoutCheck(problem, offered, ordered, layout, ViolationText.Plain).Run());
        CheckStockUse(offered, nest, violations);
        CheckQuantities(problem, nest, violations);
        CheckSingleHeats(problem, offered, nest, violations);
        CheckUnplaced(nest, violations);
        CheckPriority(problem, nest, violations);
        CheckRemnants(problem, nest, violations);
        CheckValue(problem, nest, violations);
        return violations;
    }

    /// <summary>All rules that one layout breaks by itself; empty where it is clean.</summary>
    public static IReadOnlyList<Violation> VerifyLayout(NestProblem problem, BarLayout layout) => VerifyLayout(problem, layout, ViolationText.Plain);

    /// <summary>The same, written otherwise.</summary>
    public static IReadOnlyList<Violation> VerifyLayout(NestProblem problem, BarLayout layout, ViolationText text) =>
        new LayoutCheck(
            problem,
            problem.Stock.ToDictionary(item => item.StockId, StringComparer.Ordinal),
            problem.Lines.ToDictionary(line => line.Ref),
            layout,
            text).Run();

    private static void CheckStockUse(Dictionary<string, StockItem> offered, Nest nest, List<Violation> violations)
    {
        foreach (var use in nest.Layouts.GroupBy(layout => layout.Stock.StockId, StringComparer.Ordinal))
        {
            if (!offered.TryGetValue(use.Key, out var item))
                continue;
            var bars = use.Sum(layout => (decimal)layout.Repeat);
            if (item.Kind == StockKind.Remnant && bars > 1)
                violations.Add(new(NestRule.RemnantUsedTwice, $"Remnant {use.Key} is used {bars} times."));
            else if (item.Quantity is { } quantity && bars > quantity)
                violations.Add(new(NestRule.StockOverused, $"{bars} bars of {use.Key} are used, {quantity} are there."));
        }
    }

    private static void CheckQuantities(NestProblem problem, Nest nest, List<Violation> violations)
    {
        var counted = new Dictionary<PieceRef, decimal>();
        foreach (var layout in nest.Layouts)
        {
            foreach (var cut in layout.Cuts)
                counted[cut.Piece] = counted.GetValueOrDefault(cut.Piece) + layout.Repeat;
        }
        var unplaced = nest.Unplaced.ToLookup(row => row.Piece);
        foreach (var line in problem.Lines)
        {
            var missing = unplaced[line.Ref].Sum(row => (decimal)row.Quantity);
            var count = counted.GetValueOrDefault(line.Ref) + missing;
            if (unplaced[line.Ref].Any(row => row.Reason == UnplacedReason.UnderAccepted != (missing > 0 && missing <= line.Under)))
                violations.Add(new(NestRule.UnderQuantity, $"{missing} pieces of {line.Ref} are unplaced, {line.Under} may be."));
            if (count > line.Quantity + (unplaced.Contains(line.Ref) ? 0m : line.Over))
                violations.Add(new(NestRule.TooManyPieces, $"{count} pieces of {line.Ref} are accounted for, {line.Quantity} are ordered."));
            else if (count < line.Quantity)
                violations.Add(new(NestRule.PiecesMissing, $"{count} pieces of {line.Ref} are accounted for, {line.Quantity} are ordered."));
        }
    }

    private static void CheckSingleHeats(NestProblem problem, Dictionary<string, StockItem> offered, Nest nest, List<Violation> violations)
    {
        var single = problem.Lines.Where(line => line.HeatRule == HeatRule.Single).Select(line => line.Ref).ToHashSet();
        var heatOf = new Dictionary<PieceRef, string>();
        var mixed = new HashSet<PieceRef>();
        foreach (var layout in nest.Layouts)
        {
            if (!offered.TryGetValue(layout.Stock.StockId, out var item) || item.Heat is null)
                continue;
            foreach (var cut in layout.Cuts)
            {
                if (!single.Contains(cut.Piece) || heatOf.TryAdd(cut.Piece, item.Heat) || heatOf[cut.Piece] == item.Heat || !mixed.Add(cut.Piece))
                    continue;
                violations.Add(new(NestRule.HeatsMixed, $"{cut.Piece} is cut from heats {heatOf[cut.Piece]} and {item.Heat}."));
            }
        }
    }

    private static void CheckUnplaced(Nest nest, List<Violation> violations)
    {
        var seen = new HashSet<PieceRef>();
        foreach (var row in nest.Unplaced)
        {
            if (!Reasons.Contains(row.Reason))
                violations.Add(new(NestRule.UnplacedReason, $"{row.Piece} is unplaced for '{row.Reason}'."));
            if (!seen.Add(row.Piece) || row.Quantity < 1)
                violations.Add(new(NestRule.UnplacedRow, $"{row.Piece} has a second row, or one of {row.Quantity} pieces."));
        }
    }

    private static void CheckPriority(NestProblem problem, Nest nest, List<Violation> violations)
    {
        var missing = nest.Unplaced.Select(row => row.Piece).ToHashSet();
        var placed = nest.Layouts.SelectMany(layout => layout.Cuts.Select(cut => cut.Piece)).ToHashSet();
        var reserved = problem.Stock.SelectMany(item => item.ReservedFor ?? []).ToHashSet(StringComparer.Ordinal);
        var alike = problem.Lines.Where(line => line.HeatRule == HeatRule.Any && !reserved.Contains(line.Ref.OrderId.Length > 0 ? line.Ref.OrderId : line.Ref.LineId))
            .GroupBy(line => (line.Section, (line.Grade, line.Substitutes), line.Length, line.Tolerance, line.LengthAt, (line.FirstEnd, line.SecondEnd), (line.Certificate, line.Owner, line.Plant)));
        foreach (var lines in alike)
        {
            var first = lines.Where(line => missing.Contains(line.Ref)).MinBy(line => line.Priority);
            var last = lines.Where(line => placed.Contains(line.Ref)).MaxBy(line => line.Priority);
            if (first is not null && last?.Priority > first.Priority)
                violations.Add(new(NestRule.Priority, $"{first.Ref} is left while {last.Ref} is placed."));
        }
    }

    private static void CheckRemnants(NestProblem problem, Nest nest, List<Violation> violations)
    {
        if (problem.Remnants?.MostNew is not { } most)
            return;
        foreach (var ofGrade in nest.Layouts.GroupBy(layout => layout.Stock.Grade?.Designation))
        {
            var kept = ofGrade.Sum(layout => layout.Remainder.Kind == RemainderKind.Remnant && !LayoutCheck.IsKeptForOthers(layout.Stock) ? (decimal)layout.Repeat : 0m);
            if (kept > most)
                violations.Add(new(NestRule.TooManyRemnants, $"{kept} remnants are left, at most {most} may be."));
            else if (kept < most && ofGrade.Any(layout => layout.Remainder.Kind == RemainderKind.Scrap && LayoutCheck.IsLongEnough(problem, layout)))
                violations.Add(new(NestRule.RemainderKind, $"A long remainder is booked as scrap, though only {kept} of {most} remnants are left."));
        }
    }

    private static void CheckValue(NestProblem problem, Nest nest, List<Violation> violations)
    {
        var sum = 0m;
        foreach (var layout in nest.Layouts)
        {
            var cutting = problem.CostPerCutMicros == 0 ? 0m : (decimal)problem.CostPerCutMicros * LayoutCheck.Passes(layout, problem.Rules.Kerf);
            var cycles = decimal.Ceiling((decimal)layout.Repeat / Math.Max(1, layout.Bundle.Bars));
            sum += ((decimal)layout.Stock.CostMicros + layout.Stock.PullCostMicros + layout.TransferCostMicros - layout.Remainder.ValueMicros) * layout.Repeat + cutting * cycles;
        }
        if (sum != nest.ValueMicros)
            violations.Add(new(NestRule.Value, $"The value is {nest.ValueMicros}, the bars cost {sum}."));
        if (nest.BoundMicros > nest.ValueMicros)
            violations.Add(new(NestRule.Bound, $"The bound {nest.BoundMicros} is above the value {nest.ValueMicros}."));
    }
}
