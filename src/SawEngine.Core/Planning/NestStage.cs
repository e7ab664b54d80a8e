using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Planning;

/// <summary>Nests the cutting groups, one after the other, each from the stock that the ones before it left.</summary>
internal sealed class NestStage(PlanProblem problem, INester nester, KnownNests known, CancellationToken cancellation)
{
    // A wider class leaves the scheduler more choice; it may cost this much more material than the cheapest class.
    private const decimal WidestClassMayCostMore = 0.0005m;

    private readonly Dictionary<string, int?> stockLeft = problem.Stock.ToDictionary(item => item.StockId, item => item.Quantity, StringComparer.Ordinal);

    private readonly Dictionary<string, StockItem> offered = problem.Stock.ToDictionary(item => item.StockId, StringComparer.Ordinal);

    private readonly Dictionary<(string Section, string Grade), int> remnants = [];

    private readonly Dictionary<string, DateTimeOffset> due = problem.Orders.Where(order => order.Due is not null)
        .ToDictionary(order => order.OrderId, order => order.Due!.Value, StringComparer.Ordinal);

    /// <summary>The nests of each group; those given by index in another way than for the least material.</summary>
    public IReadOnlyList<IReadOnlyList<GroupNest>> Run(IReadOnlyList<FittedGroup> groups, IReadOnlyDictionary<int, NestVariant> variants) =>
        groups.Select((group, index) => variants.GetValueOrDefault(index) is { } variant ? NestVariantOf(group, variant) : [NestGroup(group, false)]).ToList();

    private GroupNest[] NestVariantOf(FittedGroup fitted, NestVariant variant) => variant.Apart is { } apart
        ? [NestGroup(LinesOf(fitted, line => apart.Contains(line.Ref.OrderId)), variant.Widest), NestGroup(LinesOf(fitted, line => !apart.Contains(line.Ref.OrderId)) with { Unplaced = [] }, variant.Widest)]
        : [NestGroup(fitted, variant.Widest)];

    private static FittedGroup LinesOf(FittedGroup fitted, Func<OrderLine, bool> isMember) =>
        fitted with { Group = fitted.Group with { Lines = fitted.Group.Lines.Where(isMember).ToList() } };

    private GroupNest NestGroup(FittedGroup fitted, bool widest)
    {
        if (fitted.Settings.Count == 0)
            return new(fitted.Group, null, [], fitted.Unplaced, 0, 0);
        var handling = problem.StockIsCosted ? fitted.HandlingMicrosPerBar(problem.Rates) : 0;
        var best = Best(Candidates(fitted, widest).Select(sawClass => Nest(fitted, sawClass, handling)).ToList());
        foreach (var layout in best.Layouts)
            stockLeft[layout.Stock.StockId] -= layout.Repeat;
        foreach (var ofGrade in best.Layouts.GroupBy(layout => (fitted.Group.Section.Designation, layout.Stock.Grade!.Designation)))
            remnants[ofGrade.Key] = remnants.GetValueOrDefault(ofGrade.Key) + (int)RemnantLimit.NewRemnants(ofGrade);
        return best with
        {
            HandlingMicrosPerBar = handling,
            Layouts = best.Layouts.Select(layout => layout with { Stock = offered[layout.Stock.StockId] }).ToList(),
            Unplaced = fitted.Unplaced.Concat(best.Unplaced).OrderBy(pieces => pieces.Piece).ToList(),
        };
    }

    private static IEnumerable<SawClass> Candidates(FittedGroup fitted, bool widest) => SawClass.Candidates(fitted.Settings).Take(widest ? 1 : int.MaxValue);

    private static GroupNest Best(IReadOnlyList<GroupNest> candidates)
    {
        var fewest = candidates.Min(candidate => candidate.UnplacedCount);
        var fullest = candidates.Where(candidate => candidate.UnplacedCount == fewest).ToList();
        var cheapest = fullest.Min(candidate => candidate.ValueMicros);
        return fullest.First(candidate => candidate.ValueMicros <= cheapest + WidestClassMayCostMore * Math.Abs(cheapest));
    }

    private GroupNest Nest(FittedGroup fitted, SawClass sawClass, long handling)
    {
        var nestProblem = ProblemOf(fitted.Group, sawClass, handling);
        return known.Of(nestProblem, sawClass.Key, () => Nest(fitted, sawClass, handling, nestProblem));
    }

    private GroupNest Nest(FittedGroup fitted, SawClass sawClass, long handling, NestProblem nestProblem)
    {
        var group = fitted.Group;
        var nest = nester.Solve(nestProblem, problem.Effort, cancellation);
        if (NestVerifier.Verify(nestProblem, nest).Count > 0)
            return new(group, sawClass, [], Withheld(group), 0, 0);
        var gone = StockFor(group, sawClass).Where(item => stockLeft[item.StockId] == 0).ToList();
        var unplaced = nest.Unplaced.Select(pieces => !pieces.IsAccepted && WouldHaveGiven(gone, pieces.Piece, nestProblem) ? pieces with { Reason = UnplacedReason.StockUsedUp } : pieces).ToList();
        return new(group, sawClass, nest.Layouts, unplaced, nest.ValueMicros, BoundOver(fitted, sawClass, handling, nest), nest.StoppedBy);
    }

    private NestProblem ProblemOf(CuttingGroup group, SawClass sawClass, long handling) => new()
    {
        Lines = group.Lines,
        Stock = StockFor(group, sawClass).Select(WhatIsLeft).OfType<StockItem>().Select(item => item with { PullCostMicros = item.PullCostMicros + handling }).ToList(),
        Rules = sawClass.Envelope,
        Remnants = problem.Remnants is { MostNew: { } most } rules ? rules with { MostNew = most - RemnantsLeft(group, sawClass) } : problem.Remnants,
        ScrapValueMicrosPerKilogram = problem.ScrapValueMicrosPerKilogram,
        Due = due,
    };

    private IEnumerable<StockItem> StockFor(CuttingGroup group, SawClass sawClass) => problem.Stock.Where(item => Equals(item.Section, group.Section) && sawClass.CutsGrade(item.Grade));

    /// <summary>Remnants that the groups before left, of the grade of which they left most.</summary>
    private int RemnantsLeft(CuttingGroup group, SawClass sawClass) => sawClass.Settings.Max(setting => remnants.GetValueOrDefault((group.Section.Designation, setting.Grade.Designation)));

    private StockItem? WhatIsLeft(StockItem item) =>
        stockLeft[item.StockId] switch
        {
            null => item,
            > 0 and var left => item with { Quantity = left },
            _ => null,
        };

    /// <summary>Whether stock that the groups before used up could have given a piece of a line.</summary>
    private static bool WouldHaveGiven(List<StockItem> gone, PieceRef piece, NestProblem nestProblem)
    {
        if (gone.Count == 0)
            return false;
        var line = nestProblem.Lines.First(one => one.Ref == piece);
        return gone.Any(item => StockMatch.Serves(line, item) && CutFit.Carries(item, nestProblem.Rules)
            && LayoutPositions.Lay(item, [line], nestProblem.Rules, LayoutCost.Of(nestProblem)) is not null);
    }

    private static List<UnplacedPieces> Withheld(CuttingGroup group) =>
        group.Lines.Select(line => new UnplacedPieces(line.Ref, line.Quantity, UnplacedReason.NotVerified)).ToList();

    /// <summary>
    /// The nest's bound holds for the envelope. Where the saws differ, or cut bars of more grades than the nest was made from, the same pieces are bounded again under the least
    /// that any of them asks.
    /// </summary>
    private long BoundOver(FittedGroup fitted, SawClass sawClass, long handling, Nest nest)
    {
        var whole = new SawClass(fitted.Settings.Where(setting => sawClass.Settings.Any(member => member.Saw.SawId == setting.Saw.SawId)).ToList());
        if ((whole.Settings.Count == sawClass.Settings.Count && whole.IsUniform) || nest.Layouts.Count == 0)
            return nest.BoundMicros;
        var placed = nest.Layouts.SelectMany(layout => layout.Cuts.Select(cut => (cut.Piece, layout.Repeat)))
            .GroupBy(cut => cut.Piece).ToDictionary(cuts => cuts.Key, cuts => cuts.Sum(cut => cut.Repeat));
        var relaxed = ProblemOf(fitted.Group, whole, handling) with
        {
            Lines = fitted.Group.Lines.Where(line => placed.ContainsKey(line.Ref)).Select(line => line with { Quantity = placed[line.Ref], Under = 0, Over = 0 }).ToList(),
            Rules = whole.Relaxation,
        };
        return Math.Min(nester.Bound(relaxed, problem.Effort, cancellation), nest.BoundMicros);
    }
}
