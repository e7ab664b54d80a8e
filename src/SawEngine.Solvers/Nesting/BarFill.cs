namespace SawEngine.Solvers.Nesting;

/// <summary>
/// Fills one bar after the other as full as a bounded depth-first search over the pieces left makes it, and repeats each layout as often as pieces and bars last.
/// Stock is taken in a given order; a first pass leaves bars alone whose cost per length used is above a limit.
/// </summary>
internal sealed class BarFill
{
    private const int StepsPerBar = 500;
    private const int DeepestBranch = 64;

    private readonly NestModel _model;
    private readonly PieceType[] _types;
    private readonly int[] _wanted;
    private readonly int[] _next;
    private readonly (int Type, int Count)[] _path = new (int, int)[DeepestBranch];
    private readonly List<(int Type, int Count)> _best = [];
    private BarStock _stock;
    private long _bestRoom;
    private int _steps;
    private long _work;

    private BarFill(NestModel model)
    {
        _model = model;
        _types = [.. model.Types];
        _stock = model.Stock[0];
        _wanted = [.. model.Types.Select(type => type.Demand)];
        _next = [.. Enumerable.Range(1, model.Types.Length)];
    }

    /// <summary>The filled bars, in the order in which they were filled; null where canceled. Work is added to.</summary>
    public static List<OpenBar>? Fill(NestModel model, IReadOnlyList<int> stockOrder, decimal costPerLengthLimit, ref long work, SearchMeter meter)
    {
        if (model.Types.Length == 0 || model.Stock.Length == 0)
            return [];
        var fill = new BarFill(model);
        var bars = fill.Fill(stockOrder, costPerLengthLimit, meter);
        work += fill._work;
        return bars;
    }

    private List<OpenBar>? Fill(IReadOnlyList<int> stockOrder, decimal costPerLengthLimit, SearchMeter meter)
    {
        var bars = new List<OpenBar>();
        var left = _model.Stock.Select(stock => stock.Available).ToArray();
        foreach (var limit in new[] { costPerLengthLimit, decimal.MaxValue })
        {
            foreach (var stock in stockOrder)
            {
                while (left[stock] > 0 && Fullest(stock) is { } bar && (decimal)bar.NetCost(_model) / bar.Position <= limit)
                {
                    if (meter.IsCanceled)
                        return null;
                    bars.Add(Commit(bar, left[stock]));
                    left[stock] -= bars[^1].Bars;
                }
            }
        }
        return bars;
    }

    private OpenBar Commit(OpenBar bar, int available)
    {
        var repeat = _best.Min(run => _wanted[run.Type] / run.Count);
        repeat = Math.Min(repeat, available);
        foreach (var (type, count) in _best)
            _wanted[type] -= count * repeat;
        return bar with { Bars = repeat };
    }

    private OpenBar? Fullest(int stock)
    {
        _stock = _model.Stock[stock];
        _best.Clear();
        (_steps, _bestRoom) = (StepsPerBar, long.MaxValue);
        Search(0, 0, NestModel.AnyLay, 0, 0);
        _work += StepsPerBar - _steps;
        if (_best.Count == 0)
            return null;
        var bar = OpenBar.Empty(stock, 1);
        foreach (var (type, count) in _best)
            bar = bar.With(_model, type, count, 1);
        return bar;
    }

    /// <summary>Goes on behind a position with types from an index on; stops where nothing more fits, the steps are used up or the bar is full.</summary>
    private void Search(long position, int face, int lays, int from, int depth)
    {
        var room = _stock.Length - position;
        Keep(room, depth);
        if (depth == DeepestBranch)
            return;
        for (var index = NextWanted(Math.Max(from, FirstNotLongerThan(depth == 0 ? room : room + _model.MostOverlap(face)))); index < _types.Length; index = NextWanted(index + 1))
        {
            if (_steps-- <= 0 || _bestRoom <= _model.EndNeed(_stock.Class, 0))
                return;
            var type = _types[index];
            if (!_model.ClassServes(_stock.Class, type) || !NestModel.Joins(lays, type))
                continue;
            var most = (int)Math.Min(_model.Fitting(_stock, position, face, lays, type, depth == 0, asOrdered: false), _wanted[index]);
            for (var count = most; count > 0 && _steps > 0; count--)
            {
                _path[depth] = (index, count);
                if (_model.PlaceOf(_stock, position, face, lays, type, count, depth == 0, asOrdered: false) is { } place)
                    Search(place.End, place.Face, place.Lays, index + 1, depth + 1);
            }
        }
    }

    private void Keep(long room, int depth)
    {
        if (depth == 0 || room >= _bestRoom)
            return;
        _bestRoom = room;
        _best.Clear();
        _best.AddRange(_path.AsSpan(0, depth));
    }

    /// <summary>The first type, longest first, that is not longer than some room.</summary>
    private int FirstNotLongerThan(long room)
    {
        var (low, high) = (0, _types.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_types[middle].Overall > room)
                low = middle + 1;
            else
                high = middle;
        }
        return low;
    }

    /// <summary>The first type from an index on of which pieces are left; ways past exhausted types are shortened as they are walked.</summary>
    private int NextWanted(int index)
    {
        var found = index;
        while (found < _wanted.Length && _wanted[found] == 0)
            found = _next[found];
        while (index < found)
            (index, _next[index]) = (_next[index], found);
        return found;
    }
}
