namespace SawEngine.Solvers.Nesting;

/// <summary>
/// Fills one bar after the other as full as a bounded depth-first search over the pieces left makes it, and repeats each layout as often as pieces and bars last.
/// Stock is taken in a given order; a first pass leaves bars alone whose cost per length used is above a limit.
/// </summary>
internal sealed class BarFill
{
    private const int StepsPerBar = 2_000;
    private const int DeepestBranch = 48;

    private readonly NestModel _model;
    private readonly int[] _wanted;
    private readonly int[] _next;
    private int _steps;
    private OpenBar? _best;
    private long _bestRoom;

    private BarFill(NestModel model)
    {
        _model = model;
        _wanted = [.. model.Types.Select(type => type.Demand)];
        _next = [.. Enumerable.Range(0, model.Types.Count + 1)];
    }

    /// <summary>The filled bars, in the order in which they were filled; null where canceled.</summary>
    public static List<OpenBar>? Fill(NestModel model, IReadOnlyList<int> stockOrder, decimal costPerLengthLimit, CancellationToken cancellation)
    {
        var fill = new BarFill(model);
        var left = model.Stock.Select(stock => stock.Available).ToArray();
        var bars = new List<OpenBar>();
        foreach (var limit in new[] { costPerLengthLimit, decimal.MaxValue })
        {
            foreach (var stock in stockOrder)
            {
                while (left[stock] > 0 && fill.Fullest(stock) is { } bar && fill.CostPerLength(bar) <= limit)
                {
                    if (cancellation.IsCancellationRequested)
                        return null;
                    bars.Add(fill.Commit(bar, left[stock]));
                    left[stock] -= bars[^1].Bars;
                }
            }
        }
        return bars;
    }

    private decimal CostPerLength(OpenBar bar) => (decimal)bar.NetCost(_model) / bar.Position;

    private OpenBar Commit(OpenBar bar, int available)
    {
        var repeat = available;
        for (var run = bar.Last; run is not null; run = run.Before)
            repeat = Math.Min(repeat, _wanted[run.Type] / run.Count);
        for (var run = bar.Last; run is not null; run = run.Before)
            _wanted[run.Type] -= run.Count * repeat;
        return bar with { Bars = repeat };
    }

    private OpenBar? Fullest(int stock)
    {
        (_steps, _best, _bestRoom) = (StepsPerBar, null, long.MaxValue);
        Search(OpenBar.Empty(stock, 1), 0, 0);
        return _best;
    }

    private void Search(OpenBar bar, int from, int depth)
    {
        var stock = _model.Stock[bar.Stock];
        if (bar.Last is not null && stock.Length - bar.Position < _bestRoom)
            (_best, _bestRoom) = (bar, stock.Length - bar.Position);
        for (var type = NextWanted(Math.Max(from, FirstNotLongerThan(stock.Length - bar.Position))); type < _wanted.Length; type = NextWanted(type + 1))
        {
            if (_steps-- <= 0 || _bestRoom <= _model.EndNeed(stock.Class, 0))
                return;
            var most = (int)Math.Min(bar.Fitting(_model, _model.Types[type]), _wanted[type]);
            if (most == 0)
                continue;
            if (depth < DeepestBranch)
            {
                for (var count = most; count > 0 && _steps > 0; count--)
                    Search(bar.With(_model, type, count, 1), type + 1, depth + 1);
                continue;
            }
            // Too deep to branch: go on with what fits.
            bar = bar.With(_model, type, most, 1);
            if (stock.Length - bar.Position < _bestRoom)
                (_best, _bestRoom) = (bar, stock.Length - bar.Position);
        }
    }

    /// <summary>The first type, longest first, that is not longer than some room.</summary>
    private int FirstNotLongerThan(long room)
    {
        var (low, high) = (0, _model.Types.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_model.Types[middle].Overall > room)
                low = middle + 1;
            else
                high = middle;
        }
        return low;
    }

    /// <summary>The first type from an index on of which pieces are left; paths to it are shortened on the way.</summary>
    private int NextWanted(int type)
    {
        var root = type;
        while (root < _wanted.Length && _wanted[root] == 0)
            root = _next[root] > root ? _next[root] : root + 1;
        for (var at = type; at < root;)
        {
            var after = _next[at] > at ? _next[at] : at + 1;
            _next[at] = root;
            at = after;
        }
        return root;
    }
}
