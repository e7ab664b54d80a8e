using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Solvers.Nesting;

/// <summary>How many pieces of a line, and nothing else, a bar gives.</summary>
internal sealed class BarYield(OrderLine line, CutRules rules)
{
    private readonly long _overall = PieceGeometry.Of(line).Overall.Nanometers;
    private readonly long _between = LayoutPositions.Between(line.SecondEnd, line.FirstEnd, line.Section, rules).Nanometers;
    private readonly Dictionary<EndCondition, long> _ends = [];

    public long Of(StockItem stock)
    {
        if (!_ends.TryGetValue(stock.EndCondition, out var ends))
        {
            var room = LayoutPositions.LastEnd(stock, line.SecondEnd, rules) - LayoutPositions.Lead(stock, line.FirstEnd, rules);
            _ends.Add(stock.EndCondition, ends = (stock.Length - room).Nanometers);
        }
        var behindFirst = stock.Length.Nanometers - ends - _overall;
        return behindFirst < 0 ? 0 : 1 + behindFirst / (_overall + _between);
    }
}
