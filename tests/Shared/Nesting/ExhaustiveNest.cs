using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Tests.Nesting;

/// <summary>The least cost of all ways to place given pieces, by trying every one, on demand in every turn; for a handful of pieces and bars.</summary>
internal sealed class ExhaustiveNest
{
    private readonly NestProblem _problem;
    private readonly bool _withTurns;
    private readonly List<OrderLine> _pieces;
    private readonly List<StockItem> _bars;
    private readonly List<List<OrderLine>> _contents;
    private readonly Dictionary<string, long?> _costs = [];
    private long? _best;

    private ExhaustiveNest(NestProblem problem, IReadOnlyDictionary<PieceRef, int> placed, bool withTurns)
    {
        _problem = problem;
        _withTurns = withTurns;
        _pieces = [.. problem.Lines.SelectMany(line => Enumerable.Repeat(line, placed.GetValueOrDefault(line.Ref)))];
        _bars = [.. problem.Stock.SelectMany(item => Enumerable.Repeat(item, Math.Min(item.Quantity ?? int.MaxValue, _pieces.Count)))];
        _contents = [.. _bars.Select(_ => new List<OrderLine>())];
    }

    /// <summary>Null where the pieces cannot be placed.</summary>
    public static long? LeastCost(NestProblem problem, IReadOnlyDictionary<PieceRef, int> placed, bool withTurns = false)
    {
        var search = new ExhaustiveNest(problem, placed, withTurns);
        search.Place(0);
        return search._best;
    }

    private void Place(int piece)
    {
        if (piece == _pieces.Count)
        {
            Score();
            return;
        }
        for (var bar = 0; bar < _bars.Count; bar++)
        {
            // Of equal bars that are still empty, the first is as good as the others.
            if (bar > 0 && _bars[bar - 1].StockId == _bars[bar].StockId && _contents[bar - 1].Count == 0)
                continue;
            if (!StockMatch.Serves(_pieces[piece], _bars[bar]) || !CutFit.Carries(_bars[bar], _problem.Rules))
                continue;
            _contents[bar].Add(_pieces[piece]);
            Place(piece + 1);
            _contents[bar].RemoveAt(_contents[bar].Count - 1);
        }
    }

    private void Score()
    {
        var total = 0L;
        var heats = new Dictionary<PieceRef, string?>();
        for (var bar = 0; bar < _bars.Count; bar++)
        {
            if (_contents[bar].Count == 0)
                continue;
            if (LeastCost(_bars[bar], _contents[bar]) is not { } cost)
                return;
            total += cost;
            foreach (var line in _contents[bar].Where(line => line.HeatRule == HeatRule.Single))
            {
                if (!heats.TryAdd(line.Ref, _bars[bar].Heat) && heats[line.Ref] != _bars[bar].Heat)
                    return;
            }
        }
        if (_best is null || total < _best)
            _best = total;
    }

    private long? LeastCost(StockItem stock, List<OrderLine> pieces)
    {
        var key = stock.StockId + "|" + string.Join('|', pieces.Select(piece => piece.Ref));
        if (!_costs.TryGetValue(key, out var cost))
        {
            cost = Orders(pieces, 0).SelectMany(InTurns).Select(order => LayoutPositions.Lay(stock, order, _problem.Rules, LayoutCost.Of(_problem)))
                .Min(layout => layout is null || NestVerifier.VerifyLayout(_problem, layout).Count > 0 ? (long?)null : LayoutCost.Of(_problem).Micros(layout));
            _costs.Add(key, cost);
        }
        return cost;
    }

    private IEnumerable<PlacedPiece[]> InTurns(List<OrderLine> order)
    {
        IEnumerable<PlacedPiece[]> turned = [[]];
        foreach (var line in order)
        {
            var ways = _withTurns ? PieceFaces.Of(line).Select(faces => new PlacedPiece(line, faces.Turn)).ToArray() : [new PlacedPiece(line)];
            turned = turned.SelectMany(pieces => ways.Select(way => (PlacedPiece[])[.. pieces, way])).ToList();
        }
        return turned;
    }

    private static IEnumerable<List<OrderLine>> Orders(List<OrderLine> pieces, int from)
    {
        if (from >= pieces.Count - 1 || pieces.TrueForAll(piece => piece.FirstEnd.IsSquare && piece.SecondEnd.IsSquare))
            return [[.. pieces]];
        return Enumerable.Range(from, pieces.Count - from).SelectMany(i =>
        {
            var swapped = pieces.ToList();
            (swapped[from], swapped[i]) = (swapped[i], swapped[from]);
            return Orders(swapped, from + 1);
        });
    }
}
