namespace SawEngine.Solvers.Nesting;

/// <summary>
/// Best fit: pieces in a given order, each into the open bar that it leaves the least room in, else into a new bar of the first stock in a given order
/// that takes it (Johnson 1973, bin packing). Equal pieces and equal bars are handled at once.
/// </summary>
internal sealed class BestFit
{
    private readonly NestModel _model;
    private readonly int[] _opening;
    private readonly int[] _placeOf;
    private readonly FirstLongEnough _lengths;
    private readonly int[] _left;
    private readonly List<OpenBar> _bars = [];

    /// <summary>The bars that may take more, by room.</summary>
    private readonly List<(long Room, int Index)> _rooms = [];

    /// <summary>No piece takes less room behind another.</summary>
    private readonly long _leastAdded;

    private BestFit(NestModel model, IEnumerable<int> opening)
    {
        _model = model;
        _opening = [.. opening];
        _placeOf = new int[model.Stock.Length];
        for (var place = 0; place < _opening.Length; place++)
            _placeOf[_opening[place]] = place;
        _lengths = new([.. _opening.Select(stock => model.Stock[stock].Length)]);
        _left = [.. model.Stock.Select(stock => stock.Available)];
        _leastAdded = model.Types.Select(model.LeastAdded).DefaultIfEmpty().Min();
    }

    /// <summary>The filled bars, in the order in which they were begun; null where canceled; without a meter none is.</summary>
    public static List<OpenBar>? Fill(NestModel model, IEnumerable<int> typeOrder, IEnumerable<int> opening, SearchMeter? meter)
    {
        var fit = new BestFit(model, opening);
        foreach (var type in typeOrder)
        {
            if (meter is { IsCanceled: true })
                return null;
            fit.Place(type);
        }
        return fit._bars;
    }

    private void Place(int typeIndex)
    {
        var type = _model.Types[typeIndex];
        var wanted = type.Demand;
        while (wanted > 0 && TakeTightest(type) is { } index)
            wanted -= Add(index, typeIndex, wanted);
        while (wanted > 0 && Open(type) is { } index)
            wanted -= Add(index, typeIndex, wanted);
    }

    /// <summary>Puts as many pieces as fit on as many of the bars as they fill, else the rest on one bar; gives back the number placed.</summary>
    private int Add(int index, int typeIndex, int wanted)
    {
        var bars = _bars[index];
        var each = (int)Math.Min(bars.Fitting(_model, _model.Types[typeIndex]), wanted);
        var used = Math.Min(bars.Bars, wanted / each);
        if (bars.Last is null)
            Leave(bars.Stock, bars.Bars - used);
        else if (used < bars.Bars)
        {
            _bars.Add(bars with { Bars = bars.Bars - used });
            KeepOpen(_bars.Count - 1);
        }
        _bars[index] = bars.With(_model, typeIndex, each, used);
        KeepOpen(index);
        return each * used;
    }

    private int? Open(PieceType type)
    {
        for (var place = _lengths.First(type.Overall, 0); place is { } at; place = _lengths.First(type.Overall, at + 1))
        {
            var stock = _opening[at];
            if (_model.Stock[stock].Length < Need(stock, null, type))
                continue;
            _bars.Add(OpenBar.Empty(stock, _left[stock]));
            Leave(stock, 0);
            return _bars.Count - 1;
        }
        return null;
    }

    /// <summary>Leaves so many bars of a stock item for others.</summary>
    private void Leave(int stock, int bars)
    {
        _left[stock] = bars;
        _lengths.Set(_placeOf[stock], bars > 0 ? _model.Stock[stock].Length : null);
    }

    private void KeepOpen(int index)
    {
        var room = _model.Stock[_bars[index].Stock].Length - _bars[index].Position;
        if (room >= _leastAdded)
            _rooms.Insert(~_rooms.BinarySearch((room, index)), (room, index));
    }

    /// <summary>Takes the bars with the least room that takes a piece from those that may take more.</summary>
    private int? TakeTightest(PieceType type)
    {
        for (var place = ~_rooms.BinarySearch((_model.LeastAdded(type), -1)); place < _rooms.Count; place++)
        {
            var (room, index) = _rooms[place];
            if (room < Need(_bars[index].Stock, _bars[index], type))
                continue;
            _rooms.RemoveAt(place);
            return index;
        }
        return null;
    }

    /// <summary>The least room, on an empty bar or behind what lies on it, that takes a piece in one way or another.</summary>
    private long Need(int stock, OpenBar? bar, PieceType type)
    {
        var least = long.MaxValue;
        if (!_model.Serves(stock, type))
            return least;
        var stockClass = _model.Stock[stock].Class;
        foreach (var way in type.Ways)
        {
            var before = bar is null ? _model.Lead(stockClass, way.FirstFace) : _model.Gap(bar.Face, way.FirstFace);
            if (((bar?.Lays ?? NestModel.AnyLay) & way.Lays) != 0)
                least = Math.Min(least, before + type.Overall + _model.EndNeed(stockClass, way.SecondFace));
        }
        return least;
    }
}
