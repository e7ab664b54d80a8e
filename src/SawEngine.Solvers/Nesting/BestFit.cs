namespace SawEngine.Solvers.Nesting;

/// <summary>
/// Best fit: pieces in a given order, each into the open bar that it leaves the least room in, else into a new bar of the first stock in a given order
/// that takes it (Johnson 1973, bin packing). Equal pieces and equal bars are handled at once.
/// </summary>
internal sealed class BestFit
{
    /// <summary>Stock that is used up is passed over so often before it is forgotten.</summary>
    private const int OpensPerSweep = 32;

    private readonly NestModel _model;
    private readonly List<int> _opening;
    private readonly int[] _left;
    private readonly long _shortest;
    private readonly Dictionary<(int Class, int Face, int Lays), Shelf> _shelves = [];
    private readonly Dictionary<int, List<Shelf>> _filledShelves = [];
    private readonly List<OpenBar> _bars = [];

    private BestFit(NestModel model, IEnumerable<int> opening)
    {
        _model = model;
        _opening = [.. opening];
        _left = [.. model.Stock.Select(stock => stock.Available)];
        _shortest = model.Types.Length == 0 ? 0 : model.Types.Min(type => type.Overall);
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
            _left[bars.Stock] += bars.Bars - used;
        else if (used < bars.Bars)
        {
            _bars.Add(bars with { Bars = bars.Bars - used });
            Shelve(_bars.Count - 1);
        }
        _bars[index] = bars.With(_model, typeIndex, each, used);
        Shelve(index);
        return each * used;
    }

    private int? Open(PieceType type)
    {
        if (_bars.Count % OpensPerSweep == 0)
            _opening.RemoveAll(stock => _left[stock] == 0);
        foreach (var stock in _opening)
        {
            if (_left[stock] == 0 || _model.Stock[stock].Length < type.Overall)
                continue;
            var bars = OpenBar.Empty(stock, _left[stock]);
            if (bars.Fitting(_model, type) == 0)
                continue;
            _left[stock] = 0;
            _bars.Add(bars);
            return _bars.Count - 1;
        }
        return null;
    }

    private void Shelve(int index)
    {
        var bar = _bars[index];
        var stock = _model.Stock[bar.Stock];
        var room = stock.Length - bar.Position;
        if (room < _shortest)
            return;
        var key = (stock.Class, bar.Face, bar.Lays);
        if (!_shelves.TryGetValue(key, out var shelf))
            _shelves.Add(key, shelf = new(stock.Class, bar.Face, bar.Lays));
        if (shelf.Rooms.Count == 0)
            FilledOf(stock.Class).Add(shelf);
        shelf.Add((room, index));
    }

    private List<Shelf> FilledOf(int stockClass)
    {
        if (!_filledShelves.TryGetValue(stockClass, out var shelves))
            _filledShelves.Add(stockClass, shelves = []);
        return shelves;
    }

    /// <summary>Takes the bars with the least room that takes a piece from their shelf.</summary>
    private int? TakeTightest(PieceType type)
    {
        (long Room, int Index) best = (long.MaxValue, int.MaxValue);
        Shelf? bestShelf = null;
        // No two bars are equal in room and index, so that the order of the shelves does not matter.
        foreach (var (stockClass, shelves) in _filledShelves)
        {
            if (!_model.ClassServes(stockClass, type))
                continue;
            foreach (var shelf in shelves)
            {
                if (!NestModel.Joins(shelf.Lays, type))
                    continue;
                var need = NeedOf(shelf, type);
                if (shelf.Most < need)
                    continue;
                var tightest = shelf.Rooms.GetViewBetween((need, 0), (long.MaxValue, int.MaxValue)).Min;
                if (tightest.CompareTo(best) < 0)
                    (best, bestShelf) = (tightest, shelf);
            }
        }
        if (bestShelf is null)
            return null;
        bestShelf.Remove(best);
        if (bestShelf.Rooms.Count == 0)
            FilledOf(bestShelf.Class).Remove(bestShelf);
        return best.Index;
    }

    /// <summary>The least room that takes a piece in one way or another.</summary>
    private long NeedOf(Shelf shelf, PieceType type)
    {
        var least = long.MaxValue;
        foreach (var way in type.Ways)
        {
            if ((shelf.Lays & way.Lays) != 0)
                least = Math.Min(least, _model.Gap(shelf.Face, way.FirstFace) + type.Overall + _model.EndNeed(shelf.Class, way.SecondFace));
        }
        return least;
    }

    /// <summary>Open bars of one class whose last faces are alike, by room.</summary>
    private sealed class Shelf(int stockClass, int face, int lays)
    {
        public int Class => stockClass;

        public int Face => face;

        public int Lays => lays;

        public SortedSet<(long Room, int Index)> Rooms { get; } = [];

        /// <summary>The most room; looked at far more often than it changes.</summary>
        public long Most { get; private set; }

        public void Add((long Room, int Index) bars)
        {
            Rooms.Add(bars);
            Most = Math.Max(Most, bars.Room);
        }

        public void Remove((long Room, int Index) bars)
        {
            Rooms.Remove(bars);
            Most = Rooms.Count == 0 ? 0 : Rooms.Max.Room;
        }
    }
}
