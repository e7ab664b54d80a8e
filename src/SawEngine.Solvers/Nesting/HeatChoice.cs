using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;

namespace SawEngine.Solvers.Nesting;

/// <summary>Chooses the heat of each single-heat line before anything is nested; large lines choose first and reserve whole bars.</summary>
internal sealed class HeatChoice(NestProblem problem)
{
    private readonly StockAccess _access = new(problem);
    private readonly Dictionary<object, List<(string Heat, List<int> Stock)>> _heats = [];

    /// <summary>All stock of known heats, by heat, ordinal, and then from the least cost per length up.</summary>
    private readonly List<(string Heat, List<int> Stock)> _byHeat =
        [.. Enumerable.Range(0, problem.Stock.Count).Where(item => problem.Stock[item].Heat is not null)
            .GroupBy(item => problem.Stock[item].Heat!, StringComparer.Ordinal)
            .OrderBy(heat => heat.Key, StringComparer.Ordinal)
            .Select(heat => (heat.Key, heat.OrderBy(item => (decimal)problem.Stock[item].CostMicros / problem.Stock[item].Length.Nanometers)
                .ThenBy(item => problem.Stock[item].StockId, StringComparer.Ordinal).ToList()))];

    /// <summary>
    /// A heat for each single-heat line that has stock: the cheapest that suffices, or the one with the most room where so asked or where none suffices.
    /// </summary>
    public Dictionary<PieceRef, string> Choose(bool roomiest)
    {
        var offered = problem.Stock.Select(item => item.Quantity ?? int.MaxValue).ToArray();
        var left = offered.ToArray();
        var chosen = new Dictionary<PieceRef, string>();
        var lines = problem.Lines.Where(line => line.HeatRule == HeatRule.Single && CutFit.ReasonAgainst(line, problem.Rules) is null)
            .OrderByDescending(line => (decimal)line.Length.Nanometers * line.Quantity).ThenBy(line => line.Ref);
        foreach (var line in lines)
        {
            // Where all bars are reserved, the line may still fit beside others.
            if ((Best(line, left, roomiest) ?? Best(line, offered, roomiest: true)) is not { } best)
                continue;
            chosen.Add(line.Ref, best.Heat);
            foreach (var (item, bars) in best.Bars)
                left[item] = Math.Max(0, left[item] - bars);
        }
        return chosen;
    }

    private HeatTake? Best(OrderLine line, int[] left, bool roomiest)
    {
        var yield = new BarYield(line, problem.Rules);
        HeatTake? best = null;
        foreach (var (heat, stock) in HeatsFor(line))
        {
            var take = Take(heat, stock, yield, line.Quantity, left);
            if (take.Room > 0 && (best is null || take.IsBetterThan(best, line.Quantity, roomiest)))
                best = take;
        }
        return best;
    }

    /// <summary>Whether some heat, were it all for the line, has enough stock for all its pieces.</summary>
    public bool SomeSuffices(OrderLine line)
    {
        var yield = new BarYield(line, problem.Rules);
        return HeatsFor(line).Exists(heat =>
            heat.Stock.Sum(item => (decimal)yield.Of(problem.Stock[item]) * (problem.Stock[item].Quantity ?? line.Quantity)) >= line.Quantity);
    }

    /// <summary>The heats that may serve a line, ordinal, each with its stock from the least cost per length up.</summary>
    private List<(string Heat, List<int> Stock)> HeatsFor(OrderLine line)
    {
        var key = (line.Section, line.Grade, line.Substitutes, line.Certificate, _access.Of(line));
        if (!_heats.TryGetValue(key, out var heats))
        {
            heats = [.. _byHeat
                .Select(heat => (heat.Heat, Stock: heat.Stock.FindAll(item => StockMatch.Serves(line, problem.Stock[item]) && CutFit.Carries(problem.Stock[item], problem.Rules))))
                .Where(heat => heat.Stock.Count > 0)];
            _heats.Add(key, heats);
        }
        return heats;
    }

    private HeatTake Take(string heat, List<int> stock, BarYield yield, int quantity, int[] left)
    {
        var take = new HeatTake(heat);
        foreach (var item in stock)
        {
            var perBar = yield.Of(problem.Stock[item]);
            if (perBar == 0 || left[item] == 0)
                continue;
            take.Room += (decimal)perBar * left[item];
            var used = (int)Math.Min(left[item], (Math.Max(quantity - take.Pieces, 0) + perBar - 1) / perBar);
            if (used == 0)
                continue;
            take.Pieces += used * perBar;
            take.Cost += (decimal)problem.Stock[item].CostMicros * used;
            take.Bars.Add((item, used));
        }
        return take;
    }

    /// <summary>What one heat would give to a line.</summary>
    private sealed class HeatTake(string heat)
    {
        public string Heat => heat;

        public long Pieces { get; set; }

        public decimal Room { get; set; }

        public decimal Cost { get; set; }

        public List<(int Stock, int Bars)> Bars { get; } = [];

        public bool IsBetterThan(HeatTake other, int quantity, bool roomiest)
        {
            var (suffices, otherSuffices) = (Pieces >= quantity, other.Pieces >= quantity);
            return roomiest || !(suffices || otherSuffices) ? Room > other.Room
                : suffices && otherSuffices ? Cost < other.Cost
                : suffices;
        }
    }
}
