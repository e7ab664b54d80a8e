using SawEngine.Core.Nesting;

namespace SawEngine.Solvers.Nesting.Pricing;

/// <summary>Pieces and bars that are linked by who may serve whom, in the numbers of the search.</summary>
internal sealed class SearchPart
{
    /// <summary>Where canceled, the sets of pieces are not complete: then nothing may be searched.</summary>
    public SearchPart(NestModel model, IReadOnlyList<int> types, IReadOnlyList<int> stock, LayoutCost cost, SearchMeter meter)
    {
        Model = model;
        Types = types;
        Stock = stock;
        var served = new PieceGroup(model, types.Select(type => model.Types[type]));
        Demand = [.. served.Types.Select(type => type.Demand)];
        Pieces = Demand.Sum(demand => (long)demand);
        Bars = [.. stock.GroupBy(index => model.Stock[index].Kind)
            .Select(alike => new AlikeBars(model, [.. alike], served, Pieces, cost))];
        LeastSizes = [.. served.Types.Select(model.SizeOf)];
        SafeSizes = [.. served.Types.Select(served.SafeSizeOf)];
        var sets = new Dictionary<(int, long?), (int Set, long Transfer)[]>();
        foreach (var bars in Bars.DistinctBy(bars => bars.SetsKey))
            sets.Add(bars.SetsKey, meter.IsCanceled ? [] : SetsFor(bars));
        SetsOf = [.. Bars.Select(bars => sets[bars.SetsKey])];
    }

    public NestModel Model { get; }

    /// <summary>Indexes of the model's types, longest first.</summary>
    public IReadOnlyList<int> Types { get; }

    /// <summary>Indexes of the model's stock items.</summary>
    public IReadOnlyList<int> Stock { get; }

    public IReadOnlyList<AlikeBars> Bars { get; }

    public IReadOnlyList<int> Demand { get; }

    public long Pieces { get; }

    /// <summary>The least that a piece of each type takes of a bar, in nanometers.</summary>
    public IReadOnlyList<long> LeastSizes { get; }

    /// <summary>The most that a piece of each type takes of a bar.</summary>
    public IReadOnlyList<long> SafeSizes { get; }

    /// <summary>Sets of types that can lie on a bar together: some class of stock serves them, and they can be cut in one lay.</summary>
    public List<bool[]> Together { get; } = [];

    /// <summary>For each kind of bars the indexes of the sets that can lie on them, with what bringing such a bar to another plant costs.</summary>
    public IReadOnlyList<(int Set, long Transfer)[]> SetsOf { get; }

    public PieceType TypeOf(int type) => Model.Types[Types[type]];

    /// <summary>The layout of pieces on one of some bars; null where they do not fit.</summary>
    public Column? ColumnOf(int bars, ReadOnlySpan<int> counts)
    {
        var runs = new List<(int Type, int Count)>();
        for (var type = 0; type < counts.Length; type++)
        {
            if (counts[type] > 0)
                runs.Add((type, counts[type]));
        }
        return runs.Count > 0 && CutOrder.Lay(Model, Bars[bars].Stock[0], 1, runs.ConvertAll(run => (Types[run.Type], run.Count))) is { } bar ? new(bars, [.. runs], bar.NetCost(Model), bar) : null;
    }

    /// <summary>Layouts on the stock items that they take their bars from.</summary>
    public IEnumerable<OpenBar> OpenBarsOf(IEnumerable<Column> chosen)
    {
        var left = Bars.Select(bars => new Queue<int>(bars.Stock)).ToList();
        var there = Model.Stock.Select(stock => stock.Available).ToArray();
        foreach (var alike in chosen.GroupBy(column => column))
        {
            for (var open = alike.Count(); open > 0;)
            {
                var stock = left[alike.Key.Bars].Peek();
                var taken = Math.Min(open, there[stock]);
                if (taken > 0)
                    yield return alike.Key.Laid with { Stock = stock, Bars = taken };
                open -= taken;
                there[stock] -= taken;
                if (there[stock] == 0)
                    left[alike.Key.Bars].Dequeue();
            }
        }
    }

    /// <summary>The layouts of filled bars, one for each bar; those that hold other pieces are left out.</summary>
    public IEnumerable<Column> ColumnsOf(IEnumerable<OpenBar> filled)
    {
        var types = Types.Select((type, index) => (type, index)).ToDictionary(pair => pair.type, pair => pair.index);
        var kinds = Bars.SelectMany((bars, index) => bars.Stock.Select(stock => (stock, index))).ToDictionary(pair => pair.stock, pair => pair.index);
        foreach (var bar in filled)
        {
            if (!types.ContainsKey(bar.Last!.Type))
                continue;
            var runs = PieceRun.InOrder(bar.Last).Select(run => (types[run.Type], run.Count)).ToArray();
            var column = new Column(kinds[bar.Stock], runs, bar.NetCost(Model), bar);
            for (var i = 0; i < bar.Bars; i++)
                yield return column;
        }
    }

    /// <summary>The total of some pieces' sizes.</summary>
    public static long TotalOf(IReadOnlyList<long> sizes, ReadOnlySpan<int> counts)
    {
        var total = 0L;
        for (var type = 0; type < counts.Length; type++)
            total += sizes[type] * counts[type];
        return total;
    }

    private (int Set, long Transfer)[] SetsFor(AlikeBars bars)
    {
        var transfers = Types.Select((_, type) => Model.TransferCost(bars.Stock[0], TypeOf(type))).ToList();
        var sets = new List<(bool[] Set, long Transfer)>();
        foreach (var transfer in transfers.Distinct().Order())
        {
            for (var lay = 1; lay <= NestModel.AnyLay; lay *= 2)
            {
                var set = Types.Select((_, type) => Model.ClassServes(bars.Class, TypeOf(type)) && (TypeOf(type).Lays & lay) != 0 && transfers[type] <= transfer).ToArray();
                if (!set.Contains(true) || sets.Exists(other => other.Transfer <= transfer && Holds(other.Set, set)))
                    continue;
                sets.RemoveAll(other => other.Transfer >= transfer && Holds(set, other.Set));
                sets.Add((set, transfer));
            }
        }
        return [.. sets.Select(set => (IndexOf(set.Set), set.Transfer))];
    }

    private int IndexOf(bool[] set)
    {
        var known = Together.FindIndex(set.SequenceEqual);
        if (known >= 0)
            return known;
        Together.Add(set);
        return Together.Count - 1;
    }

    private static bool Holds(bool[] all, bool[] some) => !some.Where((isIn, type) => isIn && !all[type]).Any();
}
