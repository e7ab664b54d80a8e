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

    private const int GapTableFaces = 128;

    private readonly List<Face> _faces = [Face.Square];
    private readonly List<bool[]> _serves = [];
    private readonly CutRules _rules;
    private readonly LayoutCost _cost;
    private readonly long[,] _gaps;
    private readonly long[][] _leads;
    private readonly long[][] _ends;
    private readonly long[] _kerfs;

    private NestModel(NestProblem problem, Func<OrderLine, int> quantityOf, IReadOnlyDictionary<PieceRef, string> chosenHeats)
    {
        _rules = problem.Rules;
        _cost = LayoutCost.Of(problem);
        var (types, needs) = Group(problem, quantityOf, chosenHeats);
        Types = [.. types.OrderByDescending(type => type.Overall).ThenBy(type => type.FirstFace).ThenBy(type => type.SecondFace).ThenBy(type => type.Need)];
        Pieces = Types.Sum(type => type.Demand);
        var (stock, classes) = Classify(problem, needs);
        Stock = [.. stock];
        foreach (var need in needs)
            _serves.Add([.. classes.Select(need.IsServedBy)]);
        _kerfs = [.. _faces.Select(face => face.Cut.KerfAlongBar(_rules.Kerf).Nanometers)];
        _leads = PerEndCondition(classes, (item, face) => LayoutPositions.Lead(item, face.Cut, _rules));
        _ends = PerEndCondition(classes, (item, face) => item.Length - LayoutPositions.LastEnd(item, face.Cut, _rules));
        var tabled = Math.Min(_faces.Count, GapTableFaces);
        _gaps = new long[tabled, tabled];
        for (var i = 0; i < tabled; i++)
        {
            for (var j = 0; j < tabled; j++)
                _gaps[i, j] = Between(_faces[i], _faces[j]);
        }
    }

    /// <summary>The types, longest first.</summary>
    public PieceType[] Types { get; }

    /// <summary>Stock that serves at least one type, by id.</summary>
    public BarStock[] Stock { get; }

    /// <summary>All pieces wanted.</summary>
    public int Pieces { get; }

    /// <summary>
    /// The model of some of a problem's pieces. Single-heat lines without a chosen heat may be served from any known one.
    /// Lines that no saw under the rules can cut are left out, and bars that are too heavy.
    /// </summary>
    public static NestModel Of(NestProblem problem, Func<OrderLine, int> quantityOf, IReadOnlyDictionary<PieceRef, string> chosenHeats) =>
        new(problem, quantityOf, chosenHeats);

    public bool Serves(int stock, PieceType type) => _serves[type.Need][Stock[stock].Class];

    public bool NeedServed(int need, int stock) => _serves[need][Stock[stock].Class];

    public bool ClassServes(int stockClass, PieceType type) => _serves[type.Need][stockClass];

    /// <summary>Whether a bar that may lie in some ways may take a piece too: it lies one way for all its cuts.</summary>
    public static bool Joins(int lays, PieceType type) => (lays & type.Lays) != 0;

    public long Gap(int face, int nextFace) =>
        face < GapTableFaces && nextFace < GapTableFaces
            ? _gaps[face, nextFace]
            : Between(_faces[face], _faces[nextFace]);

    public long Lead(int stockClass, int face) => _leads[stockClass][face];

    /// <summary>What must stay behind the last piece's end.</summary>
    public long EndNeed(int stockClass, int face) => _ends[stockClass][face];

    /// <summary>What a bar costs whose last piece ends at a position.</summary>
    public long NetCost(BarStock stock, long end, int lastFace)
    {
        var remainder = stock.Length - end - Math.Min(_kerfs[lastFace], stock.Length - end);
        return LayoutCost.Micros(stock.Item, _cost.RemainderOf(stock.Item, Length.FromNanometers(remainder)));
    }

    /// <summary>A bar of the stock never costs less than this, whatever is left of it.</summary>
    public long LeastCost(BarStock stock) => LayoutCost.Micros(stock.Item, _cost.RemainderOf(stock.Item, stock.Item.Length));

    /// <summary>
    /// The least that a piece of a type takes of a bar, however it is turned: its length, and on each side half of the gap to a parallel face, which with its
    /// overlap may be less than none. The gap between two faces is never less than the mean of their gaps to parallel ones.
    /// </summary>
    public long SizeOf(PieceType type) => Half(2 * type.Overall + GapToLike(type.FirstFace) + GapToLike(type.SecondFace));

    /// <summary>
    /// The largest sum of sizes on a bar: from before the half gap of its first face, which the lead covers, to behind that of its last. Each face of a type may
    /// come first or last.
    /// </summary>
    public long Usable(BarStock stock, IReadOnlyList<PieceType> types) =>
        Half(FacesOf(types).Max(face => 2 * (stock.Length - EndNeed(stock.Class, face)) + GapToLike(face)) - Before(stock, types));

    /// <summary>The longest remainder that a bar could have beside a sum of sizes, were that sum nothing.</summary>
    public long LongestRemainder(BarStock stock, IReadOnlyList<PieceType> types) =>
        Half(2 * stock.Length - Before(stock, types) - FacesOf(types).Min(face => 2 * _kerfs[face] - GapToLike(face)));

    /// <summary>Twice the least that lies before the half gap of the first face on a bar.</summary>
    private long Before(BarStock stock, IReadOnlyList<PieceType> types) =>
        FacesOf(types).Min(face => 2 * Lead(stock.Class, face) - GapToLike(face));

    private static IEnumerable<int> FacesOf(IReadOnlyList<PieceType> types) => types.SelectMany(type => new[] { type.FirstFace, type.SecondFace });

    private long GapToLike(int face) => Gap(face, face);

    /// <summary>Half of a length, down.</summary>
    private static long Half(long length) => length >> 1;

    /// <summary>How many pieces of a type fit behind a position, and 0 where none does.</summary>
    public long Fitting(BarStock stock, long position, int lastFace, PieceType type, bool isEmpty)
    {
        var first = isEmpty ? Lead(stock.Class, type.FirstFace) : Gap(lastFace, type.FirstFace);
        var room = stock.Length - position - EndNeed(stock.Class, type.SecondFace) - first - type.Overall;
        return room < 0 ? 0 : 1 + room / (Gap(type.SecondFace, type.FirstFace) + type.Overall);
    }

    /// <summary>Where the last of some pieces of a type ends that are laid behind a position.</summary>
    public long EndOf(BarStock stock, long position, int lastFace, PieceType type, int count, bool isEmpty)
    {
        var first = isEmpty ? Lead(stock.Class, type.FirstFace) : Gap(lastFace, type.FirstFace);
        return position + first + count * type.Overall + (count - 1) * Gap(type.SecondFace, type.FirstFace);
    }

    /// <summary>Faces of two sections never meet on a bar; a square one is a face of all.</summary>
    private long Between(Face face, Face next) => LayoutPositions.Between(face.Cut, next.Cut, face.Section ?? next.Section, _rules).Nanometers;

    /// <summary>A length by class and face that depends on the class only through the condition of its ends.</summary>
    private long[][] PerEndCondition(List<StockItem> classes, Func<StockItem, Face, Length> length)
    {
        var rows = new Dictionary<EndCondition, long[]>();
        foreach (var item in classes)
            rows.TryAdd(item.EndCondition, [.. _faces.Select(face => length(item, face).Nanometers)]);
        return [.. classes.Select(item => rows[item.EndCondition])];
    }

    private (List<PieceType> Types, List<PieceNeed> Needs) Group(
        NestProblem problem, Func<OrderLine, int> quantityOf, IReadOnlyDictionary<PieceRef, string> chosenHeats)
    {
        var needs = new List<PieceNeed>();
        var needIndex = new Dictionary<object, int>();
        var faceIndex = new Dictionary<Face, int> { [Face.Square] = 0 };
        var types = new Dictionary<(long, int, int, int), PieceType>();
        foreach (var line in ByUrgency(problem))
        {
            var quantity = quantityOf(line);
            if (quantity == 0 || CutFit.ReasonAgainst(line, _rules) is not null)
                continue;
            var need = new PieceNeed(line, chosenHeats.GetValueOrDefault(line.Ref));
            var needed = IndexOf(needIndex, NeedKey(need), needs, need);
            var (first, second) = (FaceIndex(line.FirstEnd, line.Section), FaceIndex(line.SecondEnd, line.Section));
            var overall = PieceGeometry.Of(line).Overall.Nanometers;
            if (!types.TryGetValue((overall, first, second, needed), out var type))
            {
                type = new() { Overall = overall, FirstFace = first, SecondFace = second, Lays = LaysOf(line), Need = needed };
                types.Add((overall, first, second, needed), type);
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

    private int LaysOf(OrderLine line) => CutFit.LaysOf(line, _rules).Sum(lay => 1 << lay.QuarterTurns);

    private static IEnumerable<OrderLine> ByUrgency(NestProblem problem) =>
        problem.Lines.OrderBy(line => problem.Due.TryGetValue(line.Ref.OrderId, out var due) ? due : DateTimeOffset.MaxValue).ThenBy(line => line.Ref);

    private static object NeedKey(PieceNeed need)
    {
        var rule = need.Line.HeatRule == HeatRule.Any ? HeatRule.Any : HeatRule.Single;
        var heat = need.Line.HeatRule == HeatRule.Named ? need.Line.Heat : need.ChosenHeat;
        return (need.Line.Section, need.Line.Grade, need.Line.Certificate, rule, heat);
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
            var key = (item.Section, item.Grade, item.Certificate, item.Heat is null, heat, item.EndCondition);
            var usable = LayoutPositions.LastEnd(item, EndCut.Square, _rules) - LayoutPositions.Lead(item, EndCut.Square, _rules) + _rules.Kerf;
            stock.Add(new(item, IndexOf(classIndex, key, classes, item), available, usable.Nanometers));
        }
        return (stock, classes);
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
