using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Solvers.Nesting;

/// <summary>How many pieces of a line, and nothing else, a bar gives.</summary>
internal sealed class BarYield(OrderLine line, CutRules rules)
{
    private static readonly int EndConditions = Enum.GetValues<EndCondition>().Length;

    private readonly long _overall = PieceGeometry.Of(line).Overall.Nanometers;
    private readonly long _between = LayoutPositions.Between(line.SecondEnd, line.FirstEnd, line.Section, rules).Nanometers;
    private readonly long?[] _ends = new long?[EndConditions];

    public long Of(StockItem stock)
    {
        var ends = stock.Zones.Count > 0 ? EndsOf(stock) : _ends[(int)stock.EndCondition] ??= EndsOf(stock);
        var behindFirst = stock.Length.Nanometers - ends - _overall;
        return behindFirst < 0 ? 0 : 1 + behindFirst / (_overall + _between);
    }

    private long EndsOf(StockItem stock) =>
        (stock.Length - (LayoutPositions.LastEnd(stock, line.SecondEnd, rules) - LayoutPositions.Lead(stock, line.FirstEnd, rules))).Nanometers;
}
