using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;

namespace SawEngine.Solvers.Nesting;

/// <summary>
/// A nesting problem in numbers: pieces that are alike as types, longest first; stock that serves alike as classes; faces and what is lost between them
/// as tables. All losses are those of <see cref="LayoutPositions"/>.
/// </summary>
internal sealed class NestModel
{
    /// <summary>Lays as bits: a bar without pieces may lie in all.</summary>
    public const int AnyLay = 0b1111;

    private const int GapTableFaces = 1_024;
    private const long NotKnown = long.MinValue;
    private const int BehindPriorities = 1_000_000;

    private readonly List<Face> _faces = [Face.Square];
    private readonly List<bool[]> _serves = [];
    private readonly List<bool[]> _substitutes = [];
    private readonly string?[] _plants;
    private readonly NestProblem _problem;
    private readonly CutRules _rules;
    private readonly LayoutCost _cost;
    private readonly long[] _gaps;
    private readonly int _tabledFaces;
    private readonly BarEnds[] _ends;
    private readonly long[] _faceLeads;
    private readonly long[] _heldBehind;
    private readonly FaceOnBar[] _facesOnBar;
    private readonly long _leastGapToLike;

    private NestModel(NestProblem problem, Func<OrderLine, int> quantityOf, IReadOnlyDictionary<PieceRef, string> chosenHeats, bool fromOwnPlant, bool byPriority)
    {
        _problem = problem;
        IsRestricted = fromOwnPlant || chosenHeats.Count > 0;
        _rules = problem.Rules;
        _cost = LayoutCost.Of(problem);
        var (types, needs) = Group(problem, quantityOf, chosenHeats, fromOwnPlant, byPriority);
        Types = [.. types.OrderByDescending(type => type.Overall).ThenBy(type => type.FirstFace).ThenBy(type => type.SecondFace).ThenBy(type => type.Need)];
        Pieces = Types.Sum(type => type.Demand);
        var (stock, classes) = Classify(problem, needs);
        Stock = [.. stock];
        _plants = [.. needs.Select(need => need.Line.Plant)];
        foreach (var need in needs)
        {
            _serves.Add([.. classes.Select(need.IsServedBy)]);
            _substitutes.Add([.. classes.Select(item => StockMatch.IsSubstitute(need.Line, item))]);
        }
        _facesOnBar = [.. _faces.Select(face => FaceOnBar.Of(face.Cut, face.Section, _rules))];
        _faceLeads = [.. _faces.Select(face => LayoutPositions.LeadOf(face.Cut, _rules).Nanometers)];
        _heldBehind = [.. _faces.Select(face => LayoutPositions.HeldBehind(face.Cut, _rules).Nanometers)];
        _ends = [.. classes.Select(item => BarEnds.Of(item, _rules))];
        _tabledFaces = Math.Min(_faces.Count, GapTableFaces);
        _gaps = new long[_tabledFaces * _tabledFaces];
        _gaps.AsSpan().Fill(NotKnown);
        _leastGapToLike = Enumerable.Range(0, _faces.Count).Min(GapToLike);
    }

    private NestModel(NestModel model, PieceType[] types)
    {
        (_faces, _serves, _substitutes, _rules, _cost, _gaps, _tabledFaces, _ends, _faceLeads, _heldBehind, _facesOnBar) = (model._faces, model._serves, model._substitutes, model._rules, model._cost, model._gaps, model._tabledFaces, model._ends, model._faceLeads, model._heldBehind, model._facesOnBar);
        (_problem, _plants, IsRestricted, Stock, Types, _leastGapToLike) = (model._problem, model._plants, model.IsRestricted, model.Stock, types, model._leastGapToLike);
        Pieces = types.Sum(type => type.Demand);
    }

    /// <summary>Whether heats were chosen, or plants left out, that a nest might do without.</summary>
    public bool IsRestricted { get; }

    /// <summary>The types, longest first.</summary>
    public PieceType[] Types { get; private init; }

    /// <summary>Stock that serves at least one type, by id.</summary>
    public BarStock[] Stock { get; }

    /// <summary>All pieces wanted.</summary>
    public int Pieces { get; }

    /// <summary>Cost of each pass of the blade.</summary>
    public long CostPerCutMicros => _cost.CostPerCutMicros;

    /// <summary>How many of each type's pieces are in each rank of priority, then of priority and promise, first to last.</summary>
    public IReadOnlyList<long> Ranked(IReadOnlyList<long> placed)
    {
        var ranks = new SortedDictionary<(int, DateTimeOffset?), long>();
        foreach (var line in _problem.Lines)
            (ranks[OfPriority(line)], ranks[OfPromise(line)]) = (0, 0);
        for (var index = 0; index < Types.Length; index++)
        {
            var left = placed[index];
            foreach (var (line, quantity) in Types[index].Lines)
            {
                var taken = Math.Min(left, quantity);
                left -= taken;
                ranks[OfPriority(line)] += taken;
                ranks[OfPromise(line)] += taken;
            }
        }
        return [.. ranks.Values];

        static (int, DateTimeOffset?) OfPriority(OrderLine line) => (line.Priority, null);

        (int, DateTimeOffset?) OfPromise(OrderLine line) => (BehindPriorities + line.Priority, DueOf(_problem, line));
    }

    /// <summary>
    /// The model of some of a problem's pieces. Single-heat lines without a chosen heat may be served from any known one.
    /// Lines that no saw under the rules can cut are left out, and bars that are too heavy; where so asked, bars in another plant too.
    /// </summary>
    public static NestModel Of(NestProblem problem, Func<OrderLine, int> quantityOf, IReadOnlyDictionary<PieceRef, string> chosenHeats, bool fromOwnPlant = false, bool byPriority = false) =>
        new(problem, quantityOf, chosenHeats, fromOwnPlant, byPriority);

    /// <summary>The same model for fewer pieces of each line; types keep their indexes, even where none of their pieces is left.</summary>
    public NestModel For(IReadOnlyDictionary<PieceRef, int> quantities) => new(this, [.. Types.Select(type => type.For(quantities))]);

    public bool Serves(int stock, PieceType type) => _serves[type.Need][Stock[stock].Class];

    /// <summary>Whether a stock is of another grade than ordered, which the pieces allow in its place.</summary>
    public bool IsSubstitute(int stock, PieceType type) => _substitutes[type.Need][Stock[stock].Class];

    public bool NeedServed(int need, int stock) => _serves[need][Stock[stock].Class];

    public bool ClassServes(int stockClass, PieceType type) => _serves[type.Need][stockClass];

    /// <summary>What bringing a bar to the plant of a type's pieces costs, be they its only ones.</summary>
    public long TransferCost(int stock, PieceType type) =>
        Stock[stock].Item is { Plant: { } there, ForeignPlantCostMicros: { } cost } && _plants[type.Need] is { } needed && there != needed ? cost : 0;

    /// <summary>Whether a bar that may lie in some ways may take a piece too: it lies one way for all its cuts.</summary>
    public static bool Joins(int lays, PieceType type) => (lays & type.Lays) != 0;

    /// <summary>What lies between two faces; looked up where it was asked for before.</summary>
    public long Gap(int face, int nextFace)
    {
        if (face >= _tabledFaces || nextFace >= _tabledFaces)
            return Between(face, nextFace);
        ref var gap = ref _gaps[face * _tabledFaces + nextFace];
        if (gap == NotKnown)
            gap = Between(face, nextFace);
        return gap;
    }

    public long Lead(int stockClass, int face) => Math.Max(_ends[stockClass].CutOff, _faceLeads[face]);

    /// <summary>What must stay behind the last piece's end.</summary>
    public long EndNeed(int stockClass, int face)
    {
        var ends = _ends[stockClass];
        return Math.Max(Math.Max(ends.BehindPieces, _heldBehind[face]), ends.BehindKerf + Kerf(face));
    }

    /// <summary>
    /// What a bar costs whose last piece ends at a position. One pass of the blade for each piece is left out of account: all nests of the same pieces take these.
    /// </summary>
    public long NetCost(BarStock stock, long end, int lastFace) =>
        LayoutCost.Micros(stock.Item, _cost.RemainderOf(stock.Item, Length.FromNanometers(Remainder(stock, end, lastFace)))) + EndCutsCost(stock, stock.Length - end, lastFace);

    /// <summary>What is left of each bar behind its last kerf.</summary>
    public long RemainderOf(OpenBar bar) => Remainder(Stock[bar.Stock], bar.Position, bar.Face);

    private long Remainder(BarStock stock, long end, int lastFace) => stock.Length - end - Math.Min(Kerf(lastFace), stock.Length - end);

    /// <summary>A bar of the stock never costs less than this, whatever is left of it.</summary>
    public long LeastCost(BarStock stock) => LayoutCost.Micros(stock.Item, _cost.RemainderOf(stock.Item, stock.Item.Length)) + LeastEndCutsCost(stock.Item);

    /// <summary>The least that passes of the blade at a bar's two ends add to one pass for each piece.</summary>
    public long LeastEndCutsCost(StockItem item) =>
        _cost.CostPerCutMicros * ((LayoutPositions.Lead(item, EndCut.Square, _rules) > Length.Zero ? 1 : 0) - (MayEndWithBar(item) ? 1 : 0));

    /// <summary>Whether a last piece may end with the bar itself, without a pass behind it.</summary>
    public bool MayEndWithBar(StockItem item) => LayoutPositions.LastEnd(item, EndCut.Square, _rules) >= item.Length;

    private long EndCutsCost(BarStock stock, long behind, int lastFace) => _cost.CostPerCutMicros == 0
        ? 0
        : _cost.CostPerCutMicros * ((Lead(stock.Class, 0) > 0 ? 1 : 0) + CutCount.Behind(Length.FromNanometers(behind), lastFace != 0) - 1);

    /// <summary>
    /// The least that a piece of a type takes of a bar, however it is turned: its length, and on each side half of the gap to a parallel face, which with its
    /// overlap may be less than none. The gap between two faces is never less than the mean of their gaps to parallel ones.
    /// </summary>
    public long SizeOf(PieceType type) => Half(2 * type.Overall + GapToLike(type.FirstFace) + GapToLike(type.SecondFace));

    /// <summary>
    /// The largest sum of sizes on a bar: from before the half gap of its first face, which the lead covers, to behind that of its last. Each face of a type may
    /// come first or last.
    /// </summary>
    public static long Usable(BarStock stock, PieceGroup pieces) => Half(2 * stock.Length - pieces.EndsOn(stock.Class).Behind - pieces.EndsOn(stock.Class).Before);

    /// <summary>Pieces whose safe sizes add up to no more than this fit on a bar in any order.</summary>
    public static long SafeRoom(BarStock stock, PieceGroup pieces) => stock.Length - pieces.SafeEndsOn(stock.Class);

    /// <summary>The longest remainder that a bar could have beside a sum of sizes, were that sum nothing.</summary>
    public static long LongestRemainder(BarStock stock, PieceGroup pieces) => Half(2 * stock.Length - pieces.EndsOn(stock.Class).Before - pieces.LeastLastKerf);

    /// <summary>Whether pieces may fit on a bar in some order: their sizes are no more than is usable.</summary>
    public bool MayFit(int stock, IReadOnlyList<(int Type, int Count)> runs)
    {
        var (stockClass, total, before, behind) = (Stock[stock].Class, 0L, long.MaxValue, long.MaxValue);
        foreach (var (type, count) in runs)
        {
            var (first, second) = (Types[type].FirstFace, Types[type].SecondFace);
            total += count * SizeOf(Types[type]);
            before = Math.Min(before, Math.Min(2 * Lead(stockClass, first) - GapToLike(first), 2 * Lead(stockClass, second) - GapToLike(second)));
            behind = Math.Min(behind, Math.Min(2 * EndNeed(stockClass, first) - GapToLike(first), 2 * EndNeed(stockClass, second) - GapToLike(second)));
        }
        return total <= Half(2 * Stock[stock].Length - before - behind);
    }

    /// <summary>Twice the least that lies before the half gap of a first face on a bar, and twice the least that lies behind that of a last one.</summary>
    public (long Before, long Behind) LeastEnds(int stockClass, IReadOnlyList<int> faces) => (
        faces.Min(face => 2 * Lead(stockClass, face) - GapToLike(face)),
        faces.Min(face => 2 * EndNeed(stockClass, face) - GapToLike(face)));

    /// <summary>Twice the least that the last kerf takes behind the half gap of a face.</summary>
    public long LeastLastKerf(IReadOnlyList<int> faces) => faces.Min(face => 2 * Kerf(face) - GapToLike(face));

    /// <summary>A piece of a type takes at least so much behind any other, however it is turned.</summary>
    public long LeastAdded(PieceType type) => type.Overall + type.Ways.Min(way => Half(GapToLike(way.FirstFace) + _leastGapToLike));

    /// <summary>A piece reaches no farther back over a face than this.</summary>
    public long MostOverlap(int face) => face == 0 ? 0 : Math.Max(0, -Half(GapToLike(face) + _leastGapToLike));

    private long Kerf(int face) => _facesOnBar[face].Kerf.Nanometers;

    private long GapToLike(int face) => Gap(face, face);

    /// <summary>Half of a length, down.</summary>
    private static long Half(long length) => length >> 1;

    /// <summary>How many pieces of a type fit behind a position, and 0 where none does.</summary>
    public long Fitting(BarStock stock, long position, int face, int lays, PieceType type, bool isEmpty, bool asOrdered)
    {
        var most = 0L;
        var ways = asOrdered ? 1 : type.Ways.Length;
        for (var way = 0; way < ways; way++)
        {
            for (var other = 0; other < ways; other++)
            {
                if ((lays & type.Ways[way].Lays & type.Ways[other].Lays) != 0)
                    most = Math.Max(most, Fitting(stock, StartOf(stock, position, face, type.Ways[way], isEmpty), type, way, other));
            }
        }
        return most;
    }

    private long Fitting(BarStock stock, long start, PieceType type, int way, int other) =>
        Math.Max(Fitting(stock, start, type, way, other, fewest: 1), Fitting(stock, start, type, way, other, fewest: 2));

    /// <summary>The most pieces by steps of two: the last of them lies as the last of the fewest does.</summary>
    private long Fitting(BarStock stock, long start, PieceType type, int way, int other, int fewest)
    {
        var room = stock.Length - EndNeed(stock.Class, LastFace(type, way, other, fewest)) - start - EndOf(type, way, other, fewest);
        return room < 0 ? 0 : fewest + 2 * (room / (EndOf(type, way, other, 3) - type.Overall));
    }

    /// <summary>
    /// Where some pieces of a type come to lie behind a position: all one way, or one way and another in turns, so that facing ends are parallel where they can be.
    /// The place that ends first is taken; null where they do not fit.
    /// </summary>
    public RunPlace? PlaceOf(BarStock stock, long position, int face, int lays, PieceType type, long count, bool isEmpty, bool asOrdered)
    {
        RunPlace? best = null;
        var ways = asOrdered ? 1 : type.Ways.Length;
        for (var way = 0; way < ways; way++)
        {
            for (var other = 0; other < ways; other++)
            {
                var left = lays & type.Ways[way].Lays & type.Ways[other].Lays;
                var end = StartOf(stock, position, face, type.Ways[way], isEmpty) + EndOf(type, way, other, count);
                var last = LastFace(type, way, other, count);
                if (left != 0 && end + EndNeed(stock.Class, last) <= stock.Length && (best is null || end < best.Value.End))
                    best = new(end, last, left, way, other);
            }
        }
        return best;
    }

    private long StartOf(BarStock stock, long position, int face, PieceWay way, bool isEmpty) =>
        position + (isEmpty ? Lead(stock.Class, way.FirstFace) : Gap(face, way.FirstFace));

    private long EndOf(PieceType type, int way, int other, long count) =>
        count * type.Overall + count / 2 * Gap(type.Ways[way].SecondFace, type.Ways[other].FirstFace) + (count - 1) / 2 * Gap(type.Ways[other].SecondFace, type.Ways[way].FirstFace);

    private static int LastFace(PieceType type, int way, int other, long count) => type.Ways[count % 2 == 0 ? other : way].SecondFace;

    /// <summary>Indexes of types and stock that are linked by who may serve whom, in their order.</summary>
    public IEnumerable<(List<int> Types, List<int> Stock)> Parts()
    {
        var needs = Types.Where(type => type.Demand > 0).Select(type => type.Need).Distinct().Order().ToList();
        var partOf = needs.ToDictionary(need => need, need => need);
        foreach (var stockClass in Stock.Select(stock => stock.Class).Distinct())
        {
            var linked = needs.Where(need => _serves[need][stockClass]).Select(need => partOf[need]).ToHashSet();
            if (linked.Count < 2)
                continue;
            var part = linked.Min();
            foreach (var need in needs.Where(need => linked.Contains(partOf[need])))
                partOf[need] = part;
        }
        foreach (var part in needs.GroupBy(need => partOf[need]))
        {
            var members = part.ToHashSet();
            var classes = Stock.Select(stock => stock.Class).Distinct().Where(stockClass => part.Any(need => _serves[need][stockClass])).ToHashSet();
            yield return (
                [.. Enumerable.Range(0, Types.Length).Where(type => Types[type].Demand > 0 && members.Contains(Types[type].Need))],
                [.. Enumerable.Range(0, Stock.Length).Where(stock => classes.Contains(Stock[stock].Class))]);
        }
    }

    /// <summary>Faces of two sections never meet on a bar; a square one is a face of all.</summary>
    private long Between(int face, int nextFace) => LayoutPositions.Between(_facesOnBar[face], _facesOnBar[nextFace], _rules).Nanometers;

    private (List<PieceType> Types, List<PieceNeed> Needs) Group(
        NestProblem problem, Func<OrderLine, int> quantityOf, IReadOnlyDictionary<PieceRef, string> chosenHeats, bool fromOwnPlant, bool byPriority)
    {
        var needs = new List<PieceNeed>();
        var needIndex = new Dictionary<object, int>();
        var faceIndex = new Dictionary<Face, int> { [Face.Square] = 0 };
        var types = new Dictionary<(long, int, int, int, object?), PieceType>();
        var access = new StockAccess(problem);
        foreach (var line in ByUrgency(problem))
        {
            var quantity = quantityOf(line);
            if (quantity == 0 || CutFit.ReasonAgainst(line, _rules) is not null)
                continue;
            var need = new PieceNeed(line, chosenHeats.GetValueOrDefault(line.Ref), fromOwnPlant);
            var needed = IndexOf(needIndex, NeedKey(need, access), needs, need);
            var ways = PieceFaces.Of(line).Select(faces => new PieceWay(faces.Turn, FaceIndex(faces.First, line.Section), FaceIndex(faces.Second, line.Section), LaysOf(line, faces.Turn))).ToArray();
            var (first, second) = (ways[0].FirstFace, ways[0].SecondFace);
            var overall = PieceGeometry.Of(line).Overall.Nanometers;
            object? urgency = byPriority ? (line.Priority, DueOf(problem, line)) : null;
            if (!types.TryGetValue((overall, first, second, needed, urgency), out var type))
            {
                type = new() { Overall = overall, Ways = ways, Need = needed };
                types.Add((overall, first, second, needed, urgency), type);
            }
            type.Lines.Add((line, quantity));
            type.Demand += quantity;
        }
        return ([.. types.Values], needs);

        int FaceIndex(EndCut cut, Section? section)
        {
            var face = new Face(cut, cut.IsSquare ? null : section);
            return IndexOf(faceIndex, face, _faces, face);
        }
    }

    private int LaysOf(OrderLine line, PieceTurn turn) => CutFit.LaysOf(line, turn, _rules).Sum(lay => 1 << lay.QuarterTurns);

    private static IEnumerable<OrderLine> ByUrgency(NestProblem problem) =>
        problem.Lines.OrderBy(line => line.Priority).ThenBy(line => DueOf(problem, line)).ThenBy(line => line.Ref);

    /// <summary>Where a type's most urgent line stands among all.</summary>
    public (int Priority, DateTimeOffset Due) UrgencyOf(PieceType type) => (type.Lines[0].Line.Priority, DueOf(_problem, type.Lines[0].Line));

    /// <summary>The promise of a line's order; the last date there is where it has none.</summary>
    public static DateTimeOffset DueOf(NestProblem problem, OrderLine line) =>
        problem.Due.TryGetValue(line.Ref.OrderId, out var due) ? due : DateTimeOffset.MaxValue;

    private static object NeedKey(PieceNeed need, StockAccess access)
    {
        var rule = need.Line.HeatRule == HeatRule.Any ? HeatRule.Any : HeatRule.Single;
        var heat = need.Line.HeatRule == HeatRule.Named ? need.Line.Heat : need.ChosenHeat;
        return (need.Line.Section, need.Line.Grade, need.Line.Substitutes, need.Line.Certificate, rule, heat, access.Of(need.Line));
    }

    private (List<BarStock> Stock, List<StockItem> Classes) Classify(NestProblem problem, List<PieceNeed> needs)
    {
        var namedHeats = needs.Select(need => need.ChosenHeat ?? need.Line.Heat).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var classes = new List<StockItem>();
        var classIndex = new Dictionary<object, int>();
        var stock = new List<BarStock>();
        foreach (var item in problem.Stock.OrderBy(item => item.StockId, StringComparer.Ordinal))
        {
            var available = Math.Min(item.Quantity ?? int.MaxValue, Pieces);
            if (available <= 0 || !CutFit.Carries(item, _rules) || !needs.Exists(need => need.IsServedBy(item)))
                continue;
            var heat = item.Heat is not null && namedHeats.Contains(item.Heat) ? item.Heat : null;
            var key = (item.Section, item.Grade, item.Certificate, item.Heat is null, heat, item.EndCondition, item.Owner, item.Plant, item.ForeignPlantCostMicros is null, ZonedId(item), item.ReservedFor is null ? null : string.Join('\n', item.ReservedFor));
            var usable = LayoutPositions.LastEnd(item, EndCut.Square, _rules) - LayoutPositions.Lead(item, EndCut.Square, _rules) + _rules.Kerf;
            stock.Add(new(item, IndexOf(classIndex, key, classes, item), available, usable.Nanometers));
        }
        return (stock, classes);
    }

    /// <summary>Empty, but for a bar with zones, whose ends are like no other's.</summary>
    private static string ZonedId(StockItem item) => item.Zones.Count == 0 ? "" : item.StockId;

    /// <summary>What is lost at the ends of a bar, whatever lies on it, in nanometers.</summary>
    /// <param name="CutOff">Before the first piece.</param>
    /// <param name="BehindPieces">Behind the last piece.</param>
    /// <param name="BehindKerf">Behind the last kerf; less than nothing where it may run out.</param>
    private readonly record struct BarEnds(long CutOff, long BehindPieces, long BehindKerf)
    {
        private const long Nothing = long.MinValue / 4;

        public static BarEnds Of(StockItem item, CutRules rules) => new(
            LayoutPositions.CutOff(item, rules).Nanometers,
            (item.Length - LayoutPositions.LastPoint(item, rules)).Nanometers,
            LayoutPositions.LastKerf(item) is { } last ? (item.Length - last).Nanometers : Nothing);
    }

    /// <summary>A face and the section that it goes through; a square face is alike in all.</summary>
    private readonly record struct Face(EndCut Cut, Section? Section)
    {
        public static Face Square => default;
    }

    private static int IndexOf<TKey, TValue>(Dictionary<TKey, int> index, TKey key, List<TValue> values, TValue value)
        where TKey : notnull
    {
        if (index.TryGetValue(key, out var known))
            return known;
        index.Add(key, values.Count);
        values.Add(value);
        return values.Count - 1;
    }
}
