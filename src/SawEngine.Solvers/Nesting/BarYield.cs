using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Solvers.Nesting;

/// <summary>How many pieces of a line, and nothing else, a bar gives.</summary>
internal sealed class BarYield(OrderLine line, CutRules rules)
{
    private readonly long _overall = PieceGeometry.Of(line).Overall.Nanometers;
    private readonly long _between = LayoutPositions.Between(line.SecondEnd, line.FirstEnd, line.Section, rules).Nanometers;
    private readonly Dictionary<(EndCondition, string), long> _ends = [];

    public long Of(StockItem stock)
    {
        var key = (stock.EndCondition, stock.Zones.Count == 0 ? "" : stock.StockId);
        if (!_ends.TryGetValue(key, out var ends))
        {
            var room = LayoutPositions.LastEnd(stock, line.SecondEnd, rules) - LayoutPositions.Lead(stock, line.FirstEnd, rules);
            _ends.Add(key, ends = (stock.Length - room).Nanometers);
        }
        var behindFirst = stock.Length.Nanometers - ends - _overall;
        return behindFirst < 0 ? 0 : 1 + behindFirst / (_overall + _between);
    }
}
