using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using SawEngine.Solvers.Nesting.Pricing;

namespace SawEngine.Solvers.Nesting.Proof;

/// <summary>
/// The cheapest nest of the layouts of a pool, exactly: a dynamic program whose states are the pieces that are not cut yet. Bars that can run out come first, one after
/// the other, each unused or with one of its layouts; then bars that never run out, each with a layout for the first piece that is left. A state that loses more than
/// the allowance is dropped.
/// </summary>
internal sealed class RestStates
{
    private const int MostStates = 2_000_000;

    /// <summary>A new state takes as long as so many layouts that are tried.</summary>
    private const int StepsPerState = 8;

    private readonly SearchPart _part;
    private readonly PackedCounts _counts;
    private readonly SafeDuals _duals;
    private readonly long _allowance;
    private readonly List<Column> _pool;
    private readonly UInt128[] _pieces;
    private readonly long[] _losses;
    private readonly List<State> _states = [];
    private readonly StepBudget _budget;
    private Dictionary<UInt128, int> _layer = [];

    private RestStates(SearchPart part, PackedCounts counts, SafeDuals duals, long allowance, List<Column> pool, StepBudget budget)
    {
        (_part, _counts, _duals, _allowance, _pool, _budget) = (part, counts, duals, allowance, pool, budget);
        _pieces = [.. pool.Select(column => counts.Pack(column.Runs))];
        _losses = [.. pool.Select(column => column.CostMicros + duals.Gains[column.Bars] - column.Runs.Sum(run => run.Count * duals.Values[run.Type]))];
    }

    private bool IsStopped => _states.Count > MostStates || _budget.Exhausted;

    /// <summary>False where the steps did not suffice; else a layout for each bar, none where no nest costs as little as the bound and the allowance.</summary>
    public static bool TryRun(SearchPart part, PackedCounts counts, SafeDuals duals, long allowance, List<Column> pool, StepBudget budget, out List<Column> bars)
    {
        var states = new RestStates(part, counts, duals, allowance, pool, budget);
        states.Run();
        bars = states.IsStopped || !states._layer.TryGetValue(UInt128.Zero, out var end) ? [] : states.BarsOf(end);
        return !states.IsStopped;
    }

    private void Run()
    {
        var limited = _part.Bars.Select((bars, kind) => (Kind: kind, bars.IsLimited, bars.Available, Columns: LeastLossFirst(column => column.Bars == kind)))
            .Where(bars => bars.IsLimited).OrderBy(bars => bars.Columns.Length).ToList();
        // Bars without a layout stay unused: what they would gain is lost.
        var lost = limited.Where(bars => bars.Columns.Length == 0).Sum(bars => bars.Available * _duals.Gains[bars.Kind]);
        Reach(new(_counts.Pack(_part.Demand.Select((demand, type) => (type, demand))), lost, -1, -1));
        foreach (var bars in limited.Where(bars => bars.Columns.Length > 0))
        {
            for (var bar = 0; bar < bars.Available && !IsStopped; bar++)
                TakeBar(_duals.Gains[bars.Kind], bars.Columns);
        }
        TakeEndless();
    }

    private int[] LeastLossFirst(Func<Column, bool> isWanted) => [.. Enumerable.Range(0, _pool.Count).Where(i => isWanted(_pool[i])).OrderBy(i => _losses[i])];

    private void TakeBar(long gain, int[] columns)
    {
        // The states of a layer are those that were made last.
        var (end, start) = (_states.Count, _states.Count - _layer.Count);
        _layer = new(_layer.Count * 2);
        for (var from = start; from < end && !IsStopped; from++)
        {
            var state = _states[from];
            Reach(state with { Loss = state.Loss + gain });
            TakeAll(from, columns, null);
        }
    }

    private void TakeEndless()
    {
        var columnsFor = _part.Demand.Select((_, type) => LeastLossFirst(column => !_part.Bars[column.Bars].IsLimited && Array.Exists(column.Runs, run => run.Type == type))).ToArray();
        // Pieces only become fewer, so that the largest number is never reached again.
        var open = new PriorityQueue<UInt128, UInt128>(_layer.Keys.Select(rest => (rest, UInt128.MaxValue - rest)));
        while (open.TryDequeue(out var rest, out _) && rest != UInt128.Zero && !IsStopped)
            TakeAll(_layer[rest], columnsFor[_counts.FirstOf(rest)], open);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void TakeAll(int from, int[] columns, PriorityQueue<UInt128, UInt128>? open)
    {
        var state = _states[from];
        foreach (var column in columns)
        {
            _budget.Spend(1);
            var loss = state.Loss + _losses[column];
            if (loss > _allowance)
                return;
            if (!_counts.TryTake(state.Rest, _pieces[column], out var rest))
            {
                // Layouts that leave pieces out are in the pool themselves where they cost less.
                if (!_part.Bars[_pool[column].Bars].IsFixed)
                    continue;
                (rest, var missing) = _counts.TakeThere(state.Rest, _pieces[column], _duals.Values);
                loss += missing;
            }
            if (rest != state.Rest && Reach(new(rest, loss, from, column)))
                open?.Enqueue(rest, UInt128.MaxValue - rest);
        }
    }

    /// <summary>Whether a state is new; of two ways to it the one that loses less is kept.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Reach(State state)
    {
        if (state.Loss > _allowance)
            return false;
        ref var known = ref CollectionsMarshal.GetValueRefOrAddDefault(_layer, state.Rest, out var isKnown);
        if (isKnown)
        {
            if (state.Loss < _states[known].Loss)
                _states[known] = state;
            return false;
        }
        known = _states.Count;
        _states.Add(state);
        _budget.Spend(StepsPerState);
        return true;
    }

    private List<Column> BarsOf(int end)
    {
        var bars = new List<Column>();
        for (var state = _states[end]; state.From >= 0; state = _states[state.From])
            bars.Add(_part.ColumnOf(_pool[state.Column].Bars, _counts.Unpack(_states[state.From].Rest - state.Rest))!);
        return bars;
    }

    /// <summary>The pieces that are left, what was lost, and the state and layout behind which it was reached.</summary>
    private readonly record struct State(UInt128 Rest, long Loss, int From, int Column);
}
