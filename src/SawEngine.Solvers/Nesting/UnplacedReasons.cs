using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Solvers.Nesting;

/// <summary>Why pieces of a line are left: the first reason that applies. Lines that ask alike of the stock are looked up once.</summary>
internal sealed class UnplacedReasons(NestProblem problem, IReadOnlyList<BarLayout> layouts)
{
    private readonly StockAccess _access = new(problem);
    private readonly List<(StockItem Stock, int Priority)> _firstOn = FirstOn(problem, layouts);
    private readonly HeatChoice _heats = new(problem);
    private readonly Dictionary<object, (string? Reason, List<StockItem> Longest, List<StockItem> LongestCarried)> _offers = [];

    public string Of(OrderLine line)
    {
        var key = (line.Section, line.Grade, line.Substitutes, line.Certificate, line.HeatRule, line.Heat, _access.Of(line));
        if (!_offers.TryGetValue(key, out var offer))
            _offers.Add(key, offer = Offer(line));
        if (offer.Reason is UnplacedReason.NoStock)
            return offer.Reason;
        if ((CutFit.ReasonAgainst(line, problem.Rules) ?? offer.Reason) is { } reason)
            return reason;
        var yield = new BarYield(line, problem.Rules);
        if (offer.LongestCarried.TrueForAll(item => yield.Of(item) == 0))
            return offer.Longest.TrueForAll(item => yield.Of(item) == 0) ? UnplacedReason.LongerThanEveryBar : UnplacedReason.BarTooHeavy;
        return line.HeatRule == HeatRule.Single && !_heats.SomeSuffices(line) ? UnplacedReason.NoSingleHeat
            : WentToHigherPriority(line) ? UnplacedReason.HigherPriority
            : UnplacedReason.StockUsedUp;
    }

    /// <summary>Whether stock that would serve a line went to one of higher priority.</summary>
    private bool WentToHigherPriority(OrderLine line) =>
        _firstOn.Exists(bar => bar.Priority < line.Priority && StockMatch.Serves(line, bar.Stock));

    /// <summary>Why no stock serves lines that ask so, else the longest that do and the longest of these that the bar feed carries, of each end condition, and those with zones.</summary>
    private (string? Reason, List<StockItem> Longest, List<StockItem> LongestCarried) Offer(OrderLine line)
    {
        var ofMaterial = problem.Stock.Where(item => StockMatch.IsOfMaterial(line, item) && item.Quantity != 0).ToList();
        var ofOwner = ofMaterial.FindAll(item => StockMatch.IsOfOwner(line, item));
        var inReach = ofOwner.FindAll(item => StockMatch.IsInReach(line, item));
        var free = inReach.FindAll(item => StockMatch.IsFree(line, item));
        var certified = free.FindAll(item => StockMatch.Suffices(line.Certificate, item.Certificate));
        var ofHeat = certified.FindAll(item => StockMatch.IsOfHeat(line, item));
        var light = ofHeat.FindAll(item => CutFit.Carries(item, problem.Rules));
        var reason = ofMaterial.Count == 0 ? UnplacedReason.NoStock
            : ofOwner.Count == 0 ? UnplacedReason.OtherOwner
            : inReach.Count == 0 ? UnplacedReason.OtherPlant
            : free.Count == 0 ? UnplacedReason.Reserved
            : certified.Count == 0 ? UnplacedReason.NoCertificate
            : ofHeat.Count == 0 ? UnplacedReason.NoHeat
            : light.Count == 0 ? UnplacedReason.BarTooHeavy
            : null;
        return (reason, Longest(ofHeat), Longest(light));
    }

    /// <summary>The stock that is used, each with the highest priority of its pieces.</summary>
    private static List<(StockItem Stock, int Priority)> FirstOn(NestProblem problem, IReadOnlyList<BarLayout> layouts)
    {
        var priorities = problem.Lines.ToDictionary(line => line.Ref, line => line.Priority);
        return [.. layouts.GroupBy(layout => layout.Stock.StockId, StringComparer.Ordinal)
            .Select(ofItem => (ofItem.First().Stock, ofItem.Min(layout => layout.Cuts.Min(cut => priorities[cut.Piece]))))];
    }

    private static List<StockItem> Longest(List<StockItem> items) =>
        [.. items.GroupBy(item => (item.EndCondition, item.Zones.Count == 0 ? "" : item.StockId)).Select(alike => alike.MaxBy(item => item.Length)!)];
}
