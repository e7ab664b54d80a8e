using SawEngine.Api.Features.Nests;
using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>
/// Holds an edited nest against the verifier, and finds where in the request each rule is broken. The verifier decides what is broken; it says so of layouts and
/// nests as a whole, so it is asked again about parts: where a violation comes up, there is its place.
/// </summary>
internal sealed class EditedNestCheck(EditedNest nest, EditedMaterials materials, LengthScale scale, bool isMoney)
{
    private static readonly string[] OfBars = [NestRule.RemnantUsedTwice, NestRule.StockOverused];
    private static readonly string[] OfPieces = [NestRule.TooManyPieces, NestRule.HeatsMixed];

    private static readonly string[] OfRemainders = [NestRule.TooManyRemnants, NestRule.RemainderKind];

    /// <summary>Rules for each material, which of all materials together say nothing.</summary>
    private static readonly string[] OfMaterials = [.. OfRemainders, NestRule.Priority];

    /// <summary>No edit states a value: it follows from the layouts.</summary>
    private static readonly string[] NotStated = [NestRule.Value, NestRule.Bound];

    private readonly Dictionary<PieceRef, OrderLine> _lines = nest.Problem.Lines.ToDictionary(line => line.Ref);
    private readonly Dictionary<string, StockItem> _stock = nest.Problem.Stock.ToDictionary(item => item.StockId, StringComparer.Ordinal);

    /// <summary>All violations in the order of the request's layouts and cuts, each rule once a place.</summary>
    public IReadOnlyList<FoundViolation> Run()
    {
        var whole = NestVerifier.Verify(nest.Problem, NestOf(nest.Layouts.Select(layout => layout.Booked), nest.Unplaced, nest.ValueMicros));
        var found = Enumerable.Range(0, nest.Layouts.Count).SelectMany(i => materials.Violations(i).Concat(OfLayout(i)))
            .Select(violation => violation with { IsOfLayout = true }).ToList();
        if (whole.Any(violation => OfBars.Contains(violation.Code)))
            found.AddRange(Bars().SelectMany(bars => Among(bars, OfBars)));
        if (whole.Any(violation => OfPieces.Contains(violation.Code)))
            found.AddRange(Pieces().SelectMany(pieces => Among(pieces, OfPieces)));
        if (whole.Any(violation => violation.Code == NestRule.Priority))
            found.AddRange(OfLinesAlike());
        if (nest.Problem.Remnants?.MostNew is not null)
            found.AddRange(Remainders().SelectMany(remainders => Among(remainders, OfRemainders)).Select(AtMember));
        var codes = found.Select(violation => violation.Code).ToHashSet(StringComparer.Ordinal);
        found.AddRange(whole.Where(violation => !codes.Contains(violation.Code) && !OfMaterials.Contains(violation.Code) && !NotStated.Contains(violation.Code))
            .Select(violation => new FoundViolation(default, violation.Code, violation.Detail)));
        return
        [
            .. found.OrderBy(violation => violation.Place.Layout).ThenBy(violation => violation.Place.Cut)
                .ThenBy(violation => violation.Place.Member, StringComparer.Ordinal).ThenBy(violation => violation.Code, StringComparer.Ordinal)
                .DistinctBy(violation => (violation.Place, violation.Code)),
        ];
    }

    private IEnumerable<FoundViolation> OfLayout(int i)
    {
        var layout = nest.Layouts[i];
        var text = TextOf(layout.Json);
        var violations = Verify(layout.Stated, text);
        var places = violations.Count > 0 && layout.IsKnown ? PlacesInLayout(layout.Stated, text) : [];
        return violations.Select(violation => new FoundViolation(
            places.TryGetValue(violation, out var cuts) && cuts.TryDequeue(out var cut) ? new(i, cut) : new(i, null, MemberOf(violation.Code, layout.Json)),
            violation.Code,
            violation.Detail));
    }

    /// <summary>The cuts at which violations come up when each cut, and each pair of neighbors, is alone on the bar.</summary>
    private Dictionary<Violation, Queue<int>> PlacesInLayout(BarLayout layout, ViolationText text)
    {
        var places = new Dictionary<Violation, Queue<int>>();
        IReadOnlyList<Violation> before = [];
        for (var k = 0; k < layout.Cuts.Count; k++)
        {
            var alone = Verify(nest.Part(layout, [layout.Cuts[k]]), text);
            var pair = k == 0 ? [] : Verify(nest.Part(layout, [layout.Cuts[k - 1], layout.Cuts[k]]), text);
            foreach (var violation in alone.Concat(pair.Except(alone).Except(before)))
            {
                if (!places.TryGetValue(violation, out var cuts))
                    places.Add(violation, cuts = new());
                cuts.Enqueue(k);
            }
            before = alone;
        }
        return places;
    }

    private FoundViolation AtMember(FoundViolation violation) =>
        violation with { Place = violation.Place with { Member = MemberOf(violation.Code, nest.Layouts[violation.Place.Layout!.Value].Json) } };

    /// <summary>The member of a layout that a rule is about; null where it is the layout as a whole, or the edit does not state the member.</summary>
    private static string? MemberOf(string code, EditedLayoutJson layout) => code switch
    {
        NestRule.UnknownStock => "stockId",
        NestRule.EmptyLayout => "cuts",
        NestRule.BundleSize or NestRule.BundleTooLarge or NestRule.BundleTooHeavy or NestRule.BundleHoldDown or NestRule.BundleSection or NestRule.BundleMiter or NestRule.BundleHeats
            when layout.Bundle is not null => "bundle",
        NestRule.Trim when layout.TrimLength is not null => "trimLength",
        NestRule.RemainderLength or NestRule.RemainderKind or NestRule.RemainderValueHigh or NestRule.RemainderValueLow or NestRule.TooManyRemnants
            when layout.Remainder is not null => "remainder",
        _ => null,
    };

    /// <summary>The bars of each stock item.</summary>
    private IEnumerable<List<Part>> Bars() => AllBars().GroupBy(part => part.Layout.Stock.StockId, StringComparer.Ordinal).Select(bars => bars.ToList());

    /// <summary>The bars of each material.</summary>
    private IEnumerable<List<Part>> Remainders() => AllBars().GroupBy(part => materials.OfStock(part.Layout.Stock.StockId)).Select(bars => bars.ToList());

    private IEnumerable<Part> AllBars() => nest.Layouts.Select((layout, i) => new Part(new(i), layout.Booked with { Cuts = [] }));

    /// <summary>The cuts of each order line.</summary>
    private IEnumerable<List<Part>> Pieces() => AllPieces().GroupBy(part => part.Layout.Cuts[0].Piece).Select(pieces => pieces.ToList());

    private IEnumerable<Part> AllPieces() =>
        nest.Layouts.SelectMany((layout, i) => layout.Booked.Cuts.Select((cut, k) => new Part(new(i, k), layout.Booked with { Cuts = [cut] })));

    /// <summary>Where pieces are placed while some of a line that is alike, but served first, are left out.</summary>
    private IEnumerable<FoundViolation> OfLinesAlike()
    {
        var alike = nest.Problem.Lines.ToLookup(Alike);
        var left = nest.Unplaced.ToLookup(row => Alike(_lines[row.Piece]));
        return AllPieces().Where(part => _lines.ContainsKey(part.Layout.Cuts[0].Piece)).GroupBy(part => Alike(_lines[part.Layout.Cuts[0].Piece]))
            .Where(pieces => left.Contains(pieces.Key))
            .SelectMany(pieces => Among([.. pieces], [NestRule.Priority], parts => Verify(nest.Problem with { Lines = [.. alike[pieces.Key]] }, parts, left[pieces.Key])));
    }

    /// <summary>What lines have in common that differ in name, number and priority alone.</summary>
    private (NestMaterial, OrderLine) Alike(OrderLine line) =>
        (materials.OfPiece(line.Ref.LineId), line with { Ref = default, Quantity = 0, Under = 0, Over = 0, Priority = 0 });

    /// <summary>What parts break together, each rule at the first part that does not go with those before it.</summary>
    private IEnumerable<FoundViolation> Among(List<Part> parts, string[] codes) =>
        Among(parts, codes, some => Verify(ProblemOf(some.ConvertAll(part => part.Layout)), some, []));

    private static IEnumerable<FoundViolation> Among(List<Part> parts, string[] codes, Func<List<Part>, IReadOnlyList<Violation>> verify) =>
        verify(parts).Where(violation => codes.Contains(violation.Code))
            .Select(violation => new FoundViolation(parts[FewestThatBreak(parts, violation.Code, verify) - 1].Place, violation.Code, violation.Detail));

    /// <summary>More parts break what fewer do, so the number is found by halving.</summary>
    private static int FewestThatBreak(List<Part> parts, string code, Func<List<Part>, IReadOnlyList<Violation>> verify)
    {
        var (low, high) = (1, parts.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (verify(parts[..middle]).Any(violation => violation.Code == code))
                high = middle;
            else
                low = middle + 1;
        }
        return low;
    }

    private IReadOnlyList<Violation> Verify(BarLayout layout, ViolationText text) => NestVerifier.VerifyLayout(ProblemOf([layout]), layout, text);

    /// <summary>Figures in the unit of the request, and the name that the request gives the layout.</summary>
    private ViolationText TextOf(EditedLayoutJson layout) => new(layout.LayoutId, scale.Text, isMoney ? ViolationText.Plain.Value : scale.Text);

    private static IReadOnlyList<Violation> Verify(NestProblem problem, List<Part> parts, IEnumerable<UnplacedPieces> unplaced) =>
        NestVerifier.Verify(problem, NestOf(parts.ConvertAll(part => part.Layout), unplaced, 0));

    /// <summary>The problem with the lines and the stock of some layouts alone, so that asking about a part costs no more than the part.</summary>
    private NestProblem ProblemOf(IReadOnlyList<BarLayout> layouts) => nest.Problem with
    {
        Lines = [.. layouts.SelectMany(layout => layout.Cuts).Select(cut => _lines.GetValueOrDefault(cut.Piece)).OfType<OrderLine>().Distinct()],
        Stock = [.. layouts.Select(layout => _stock.GetValueOrDefault(layout.Stock.StockId)).OfType<StockItem>().Distinct()],
    };

    private static Nest NestOf(IEnumerable<BarLayout> layouts, IEnumerable<UnplacedPieces> unplaced, long valueMicros) => new()
    {
        Layouts = [.. layouts],
        // The verifier knows the reasons of solvers alone.
        Unplaced = [.. unplaced.Select(row => row.IsAccepted ? row : row with { Reason = UnplacedReason.StockUsedUp })],
        ValueMicros = valueMicros,
        BoundMicros = 0,
        StoppedBy = StoppedBy.Proof,
    };

    /// <summary>A part of the edited nest.</summary>
    private sealed record Part(EditedPlace Place, BarLayout Layout);
}
