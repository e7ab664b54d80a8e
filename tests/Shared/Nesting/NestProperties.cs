using SawEngine.Core;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Stock;
using SawEngine.Solvers.Nesting;

namespace SawEngine.Tests.Nesting;

/// <summary>What holds of every nest of every problem: each property says what is wrong, and nothing where it holds.</summary>
internal static class NestProperties
{
    /// <summary>All faults of the nests of a random problem, and how often a property had something to compare.</summary>
    public static IEnumerable<string> Faults(int seed, Dictionary<string, int> compared)
    {
        var problem = RandomProblem.Of(seed, mostLines: 12, mostQuantity: 20, mostStock: 8);
        var effort = seed % 8 == 0 ? Effort.Standard : Effort.Quick;
        var nest = Solve(problem, effort);
        return
        [
            .. Clean(problem, nest),
            .. Repeated(problem, nest, effort),
            .. Shuffled(problem, nest, effort, new(seed)),
            .. Scaled(problem, nest, effort, compared),
            .. WithMoreStock(problem, nest, effort, new(seed), compared),
            .. OfOtherEffort(problem, nest, effort, compared),
            .. Canceled(problem, new Random(seed).Next(0, 200), compared),
        ];
    }

    /// <summary>The bound of a small problem against every way to place the same pieces.</summary>
    public static IEnumerable<string> FaultsOfBound(INester nester, int seed, Dictionary<string, int> compared)
    {
        var problem = RandomProblem.Of(seed, mostLines: 3, mostQuantity: 2, mostStock: 3);
        var nest = nester.Solve(problem, Effort.Standard, CancellationToken.None);
        var placed = Placed(nest);
        if (placed.Count == 0 || ExhaustiveNest.LeastCost(problem, placed, withTurns: true) is not { } least)
            yield break;
        Count(compared, "bound");
        if (UsesSubstitutes(problem, nest))
            Count(compared, "substitutes used");
        if (nest.BoundMicros == least)
            Count(compared, "bound met");
        // All nests know no limit of new remnants.
        if (problem.Remnants?.MostNew is null)
            Count(compared, nest.ValueMicros == least ? "least cost found" : "least cost missed");
        if (nest.BoundMicros > least)
            yield return $"bound {nest.BoundMicros} above least {least}";
        if (least > nest.ValueMicros)
            yield return $"least {least} above value {nest.ValueMicros}";
        if (nest.BoundMicros < NestBound.Micros(problem, placed))
            yield return $"bound {nest.BoundMicros} below that by capacity {NestBound.Micros(problem, placed)}";
    }

    /// <summary>The pieces placed of each line.</summary>
    public static Dictionary<PieceRef, int> Placed(Nest nest) =>
        nest.Layouts.SelectMany(layout => layout.Cuts.Select(cut => (cut.Piece, layout.Repeat)))
            .GroupBy(cut => cut.Piece).ToDictionary(cuts => cuts.Key, cuts => cuts.Sum(cut => cut.Repeat));

    private static Nest Solve(NestProblem problem, Effort effort) => new ColumnNester().Solve(problem, effort, CancellationToken.None);

    private static IEnumerable<string> Clean(NestProblem problem, Nest nest) =>
        NestVerifier.Verify(problem, nest).Select(violation => $"{violation.Code}: {violation.Detail}");

    private static IEnumerable<string> Repeated(NestProblem problem, Nest nest, Effort effort)
    {
        if (NestText.Of(Solve(problem, effort)) != NestText.Of(nest))
            yield return "a second search gives another nest";
    }

    private static IEnumerable<string> Shuffled(NestProblem problem, Nest nest, Effort effort, Random random)
    {
        var (lines, stock) = (problem.Lines.ToArray(), problem.Stock.ToArray());
        random.Shuffle(lines);
        random.Shuffle(stock);
        if (NestText.Of(Solve(problem with { Lines = lines, Stock = stock }, effort)) != NestText.Of(nest))
            yield return "another order of lines and stock gives another nest";
    }

    /// <summary>
    /// The same problem in half the unit of length. Miters are left out, since what follows from a section is rounded to a fixed grid.
    /// Bounds may look one nanometer beyond a stretch, and so differ by what that is worth.
    /// </summary>
    private static IEnumerable<string> Scaled(NestProblem problem, Nest nest, Effort effort, Dictionary<string, int> compared)
    {
        if (problem.Lines.Any(line => !line.FirstEnd.IsSquare || !line.SecondEnd.IsSquare))
            yield break;
        Count(compared, "scaled");
        var twice = Solve(Twice(problem), effort);
        if (twice.ValueMicros != nest.ValueMicros)
            yield return $"twice as long, the value is {twice.ValueMicros}, not {nest.ValueMicros}";
        else if (Structure(twice) != Structure(nest))
            yield return "twice as long, the nest is another";
    }

    private static IEnumerable<string> WithMoreStock(NestProblem problem, Nest nest, Effort effort, Random random, Dictionary<string, int> compared)
    {
        var more = problem with { Stock = [.. problem.Stock.Select(item => More(item, random)), .. problem.Stock.Take(2).Select(item => item with { StockId = $"{item.StockId}-2" })] };
        var other = Solve(more, effort);
        foreach (var fault in Clean(more, other))
            yield return $"with more stock: {fault}";
        if (!SamePlaced(nest, other))
            yield break;
        Count(compared, "more stock");
        if (other.BoundMicros > nest.ValueMicros)
            yield return $"with more stock the bound is {other.BoundMicros}, above the value {nest.ValueMicros} with less";
        if (IsProved(nest) && IsProved(other))
            Count(compared, "more stock, proved");
    }

    private static IEnumerable<string> OfOtherEffort(NestProblem problem, Nest nest, Effort effort, Dictionary<string, int> compared)
    {
        var other = Solve(problem, effort == Effort.Quick ? Effort.Standard : Effort.Quick);
        if (!SamePlaced(nest, other))
            yield break;
        Count(compared, "other effort");
        if (nest.BoundMicros > other.ValueMicros || other.BoundMicros > nest.ValueMicros)
            yield return $"bounds of two efforts are above the values: {nest.BoundMicros} to {nest.ValueMicros}, {other.BoundMicros} to {other.ValueMicros}";
    }

    private static IEnumerable<string> Canceled(NestProblem problem, int polls, Dictionary<string, int> compared)
    {
        foreach (var most in new[] { 0, polls })
        {
            var left = most;
            var nest = new ColumnNester().Solve(problem, Effort.Standard, new SearchMeter(() => --left < 0));
            if (left < 0)
                Count(compared, "canceled");
            foreach (var fault in Clean(problem, nest))
                yield return $"canceled after {most} polls: {fault}";
        }
    }

    private static bool SamePlaced(Nest nest, Nest other)
    {
        var (placed, others) = (Placed(nest), Placed(other));
        return placed.Count == others.Count && placed.All(line => others.GetValueOrDefault(line.Key) == line.Value);
    }

    private static bool UsesSubstitutes(NestProblem problem, Nest nest)
    {
        var lines = problem.Lines.ToDictionary(line => line.Ref);
        return nest.Layouts.Any(layout => layout.Cuts.Any(cut => StockMatch.IsSubstitute(lines[cut.Piece], layout.Stock)));
    }

    private static bool IsProved(Nest nest) => nest.ValueMicros == nest.BoundMicros;

    private static StockItem More(StockItem item, Random random) =>
        item.Kind == StockKind.Remnant || item.Quantity is null ? item : item with { Quantity = item.Quantity + random.Next(0, 3) };

    private static string Structure(Nest nest) => string.Join('\n', nest.Layouts.Select(layout =>
        $"{layout.Repeat} x {layout.Stock.StockId}: {string.Join(", ", layout.Cuts.Select(cut => cut.Piece))}, {layout.Remainder.Kind}"));

    private static NestProblem Twice(NestProblem problem) => problem with
    {
        Lines = [.. problem.Lines.Select(line => line with { Length = 2 * line.Length, Tolerance = new(2 * line.Tolerance.Plus, 2 * line.Tolerance.Minus) })],
        Stock = [.. problem.Stock.Select(item => item with { Length = 2 * item.Length, Zones = [.. item.Zones.Select(zone => zone with { From = 2 * zone.From, To = 2 * zone.To })] })],
        Rules = problem.Rules with
        {
            Kerf = 2 * problem.Rules.Kerf,
            Tail = 2 * problem.Rules.Tail,
            Trim = problem.Rules.Trim.ToDictionary(trim => trim.Key, trim => 2 * trim.Value),
            ThinnestSlice = 2 * problem.Rules.ThinnestSlice,
            ShortestPiece = 2 * problem.Rules.ShortestPiece,
            LongestPiece = problem.Rules.LongestPiece is { } longest ? 2 * longest : null,
            LoadLimit = problem.Rules.LoadLimit is { } load ? new(2 * load.Kilograms) : null,
        },
        Remnants = problem.Remnants is { } remnants
            ? remnants with { KeepFrom = 2 * remnants.KeepFrom, Classes = [.. remnants.Classes.Select(one => one with { From = 2 * one.From })] }
            : null,
        // Twice the length weighs twice as much.
        ScrapValueMicrosPerKilogram = problem.ScrapValueMicrosPerKilogram / 2,
    };

    private static void Count(Dictionary<string, int> compared, string property) => compared[property] = compared.GetValueOrDefault(property) + 1;
}
