using SawEngine.Solvers.Nesting.Master;
using SawEngine.Solvers.Nesting.Pricing;
using SawEngine.Solvers.Nesting.Proof;
using SawEngine.Solvers.Nesting.Rounding;

namespace SawEngine.Solvers.Nesting;

/// <summary>Nests one part: known layouts, exact fill, linear program with bound, dive, repacking; each only where bound and cost do not meet yet.</summary>
internal sealed class PartSearch
{
    private const int RoundsPerStep = 5;
    private const int MostStartKinds = 20;

    /// <summary>Where one more bar is a large step in cost, what is left after a step is priced more thoroughly.</summary>
    private const int RoundsPerLargeStep = 20;

    /// <summary>Where no nest is known, one is looked for that costs no more than the bound and this part of it.</summary>
    private const int LikelyGap = 8;

    private readonly SearchPart _part;
    private readonly SearchEffort _effort;
    private readonly SearchMeter _meter;
    private readonly CostGrid _grid;

    private PartSearch(SearchPart part, List<Column> known, long knownBound, SearchEffort effort, SearchMeter meter)
    {
        (_part, _effort, _meter) = (part, effort, meter);
        _grid = new(part.Bars.Select(bars => (bars.CostMicros, bars.IsFixed && !part.SetsOf.Any(sets => sets.Any(set => set.Transfer > 0)))));
        Bars = known;
        Bound = knownBound;
    }

    /// <summary>A layout for each bar.</summary>
    public List<Column> Bars { get; private set; }

    /// <summary>No nest of the part costs less, in millionths.</summary>
    public long Bound { get; private set; }

    private long Cost => Bars.Sum(bar => bar.CostMicros);

    private bool IsProved => Cost <= Bound;

    /// <summary>Searches from a nest and a bound that are known.</summary>
    public static PartSearch Run(SearchPart part, List<Column> known, long knownBound, SearchEffort effort, SearchMeter meter)
    {
        var search = new PartSearch(part, known, knownBound, effort, meter);
        search.Run();
        return search;
    }

    /// <summary>A bound by the linear program alone.</summary>
    public static long BoundOf(SearchPart part, long knownBound, SearchEffort effort, SearchMeter meter)
    {
        var search = new PartSearch(part, [], knownBound, effort, meter);
        if (meter.IsStopped || Pricer.IsTooLarge(part))
            return knownBound;
        var root = search.SolveRoot(search.Master(), Pricer.Fine(part, effort.Cells, meter), long.MaxValue);
        search.SearchExactly(root, search.Bound + search.Bound / LikelyGap);
        return search.Bound;
    }

    /// <summary>Nests of a part that may place more pieces than a known one: all that is wanted is asked for, and what is left out has a price.</summary>
    public static IEnumerable<List<Column>> Placing(SearchPart part, List<Column> known, SearchEffort effort, SearchMeter meter)
    {
        if (meter.IsStopped || Pricer.IsTooLarge(part))
            yield break;
        var search = new PartSearch(part, known, 0, effort, meter);
        var master = search.Master();
        var pricer = Pricer.Fine(part, effort.Cells, meter);
        search.SolveRoot(master, pricer, long.MaxValue);
        foreach (var (bars, left) in search.Dives(master, pricer, RoundsPerStep, 1 + effort.MoreDives))
        {
            yield return bars;
            if (left == 0)
                yield break;
        }
    }

    private MasterProgram Master()
    {
        var master = new MasterProgram(_part, [.. _part.Demand], [.. _part.Bars.Select(bars => bars.Available)], _meter);
        foreach (var column in StartColumns())
            master.Add(column);
        return master;
    }

    private RootProgram SolveRoot(MasterProgram master, Pricer pricer, long knownCost)
    {
        var root = new RootProgram(_part, master, pricer, _grid, _meter);
        root.Solve(Bound, knownCost, _effort.GoodEnough);
        Bound = Math.Max(Bound, Math.Min(knownCost, _grid.RoundUp(root.Bound)));
        return root;
    }

    private void Run()
    {
        if (IsProved || _meter.IsStopped)
            return;
        FillExactly(_effort.FirstFillSteps);
        if (IsProved || _meter.IsStopped || Pricer.IsTooLarge(_part))
            return;
        var master = Master();
        var pricer = Pricer.Fine(_part, _effort.Cells, _meter);
        var root = SolveRoot(master, pricer, Cost);
        if (IsProved || _meter.IsStopped)
            return;
        var (duals, pool) = (master.Duals.ToArray(), master.Columns.ToList());
        foreach (var found in Dives(master, pricer, IsLargeStep ? RoundsPerLargeStep : RoundsPerStep, 1 + _effort.MoreDives))
        {
            Take(found);
            if (!IsLargeStep || IsProved)
                break;
        }
        if (!IsProved && SearchExactly(root, Cost) is { } cheaper)
            Take((cheaper, 0));
        FillExactly(_effort.FillSteps);
        RepackBars(new Repack(_part, Pricer.Coarse(_part, _meter), duals, [.. pool, .. Bars], _meter));
    }

    /// <summary>Dives one after the other, from a root program that is solved; behind the first, each goes another way.</summary>
    private IEnumerable<(List<Column> Bars, long Left)> Dives(MasterProgram master, Pricer pricer, int roundsPerStep, int most)
    {
        var (wanted, available) = (_part.Demand.ToArray(), _part.Bars.Select(bars => bars.Available).ToArray());
        if (_meter.IsStopped)
            yield break;
        yield return Dive.Run(_part, master, pricer, wanted, available, roundsPerStep, _meter);
        var random = new SplitMix(1);
        for (var i = 1; i < most && !_meter.IsStopped; i++)
        {
            master.Ask(wanted, available);
            if (ColumnGeneration.Run(_part, master, pricer, wanted, available, roundsPerStep, _meter))
                yield return Dive.Run(_part, master, pricer, wanted, available, roundsPerStep, _meter, random);
        }
    }

    /// <summary>Whether one more bar costs more than what counts as good enough.</summary>
    private bool IsLargeStep => _grid.Unit > _effort.GoodEnough * Cost;

    private void Take((List<Column> Bars, long Left) found)
    {
        if (found.Left == 0 && found.Bars.Sum(bar => bar.CostMicros) < Cost)
            Bars = found.Bars;
    }

    private List<Column>? SearchExactly(RootProgram root, long knownCost)
    {
        if (_meter.IsStopped || !ExactSearch.IsFor(_part) || root.SafeDuals() is not { } duals)
            return null;
        var exact = new ExactSearch(_part, duals, _grid, _effort.ExactSteps, _meter.Cancellation);
        exact.Run(knownCost);
        Bound = Math.Max(Bound, Math.Min(knownCost, exact.Bound));
        return exact.Cheaper;
    }

    private void FillExactly(long mostSteps)
    {
        if (_part.Bars[0].CostMicros > 0 && !IsProved && ExactFill.Run(_part, Bound / _part.Bars[0].CostMicros, mostSteps, _meter) is { } filled)
            Take((filled, 0));
    }

    private void RepackBars(Repack repack)
    {
        var started = _meter.Spent;
        _meter.Limit = started + _effort.RepackWorkPerType * _part.Types.Count;
        var vain = 0;
        for (var i = 0; Bars.Count > 1 && vain < Math.Min(_effort.VainRepacks, Bars.Count * _effort.VainRepacksPerBar) && Cost - Bound > _effort.GoodGap * Cost && !IsProved && !_meter.IsStopped; i++)
        {
            var before = Cost;
            Bars = repack.Try(Bars, _effort.RepackSizes[i % _effort.RepackSizes.Count]);
            vain = Cost < before ? 0 : vain + 1;
        }
        _meter.Limit = long.MaxValue;
    }

    /// <summary>What is known, and bars of one type each of those kinds that never run out, where there are many the cheapest.</summary>
    private IEnumerable<Column> StartColumns()
    {
        foreach (var bar in Bars)
            yield return bar;
        var endless = Enumerable.Range(0, _part.Bars.Count).Where(bars => !_part.Bars[bars].IsLimited && _part.Bars[bars].SafeRoom > 0)
            .OrderBy(bars => (double)_part.Bars[bars].CostMicros / _part.Bars[bars].SafeRoom).Take(MostStartKinds).Order();
        foreach (var bars in endless)
        {
            for (var type = 0; type < _part.Types.Count; type++)
            {
                var counts = new int[_part.Types.Count];
                counts[type] = (int)Math.Clamp(_part.Bars[bars].SafeRoom / Math.Max(1, _part.SafeSizes[type]), 0, _part.Demand[type]);
                if (counts[type] > 0 && _part.Model.ClassServes(_part.Bars[bars].Class, _part.TypeOf(type)) && _part.ColumnOf(bars, counts) is { } column)
                    yield return column;
            }
        }
    }
}
