using SawEngine.Core.Costs;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Saws;

namespace SawEngine.Core.Planning;

/// <summary>
/// Carries every cost down to the order lines. What a pass of the blade costs goes to the line whose face it makes, in all bars of a cut bundle at once; what a bar costs (material less remainder,
/// loading, trim, handling) goes to its lines by length; set-ups and the extra price of overtime go to the pieces of the job alike. Each kind is rounded once, to cents at the line, half to even
/// for the total and by largest remainders for the shares, so that the lines add up.
/// </summary>
internal sealed class CostRollUp(PlanProblem problem)
{
    private const decimal Cent = 0.01m;
    private const decimal Tenth = 0.1m;
    private const decimal SecondsPerHour = 3600m;
    private const decimal Million = 1_000_000m;

    private readonly SortedDictionary<PieceRef, Share> shares = [];

    /// <summary>Adds a job as it is cut; the extra price of overtime counts as labor.</summary>
    public void Add(Saw saw, Blade blade, IReadOnlyList<BarWork> bars, long setUpSeconds, decimal overtimeCost)
    {
        var pieces = bars.Sum(bar => (long)bar.Layout.Cuts.Count * bar.Layout.Repeat);
        foreach (var bar in bars)
        {
            AddPasses(saw, blade, bar);
            AddBar(saw, blade, bar);
            foreach (var cut in bar.Layout.Cuts)
            {
                AddTime(cut.Piece, saw, setUpSeconds * (decimal)bar.Layout.Repeat / pieces);
                Of(cut.Piece).Labor += overtimeCost * bar.Layout.Repeat / pieces;
            }
        }
    }

    /// <summary>The rounded costs by line.</summary>
    public IReadOnlyDictionary<PieceRef, LineCost> Round()
    {
        var lines = shares.ToList();
        var material = Rounded(lines, share => share.MaterialMicros / Million);
        var machine = Rounded(lines, share => share.Machine);
        var labor = Rounded(lines, share => share.Labor);
        var blade = Rounded(lines, share => share.Blade);
        var handling = Rounded(lines, share => share.Handling);
        return Enumerable.Range(0, lines.Count).ToDictionary(
            i => lines[i].Key,
            i => new LineCost(new(material[i]), new(machine[i]), new(labor[i]), new(blade[i]), new(handling[i])));
    }

    /// <summary>The seconds by line, set-ups included, to tenths; by largest remainders, so that the lines add up to the jobs.</summary>
    public IReadOnlyDictionary<PieceRef, decimal> Seconds()
    {
        var lines = shares.ToList();
        var seconds = LargestRemainder.Round(lines.Select(line => line.Value.Seconds).ToList(), Tenth);
        return Enumerable.Range(0, lines.Count).ToDictionary(i => lines[i].Key, i => seconds[i]);
    }

    private static decimal[] Rounded(List<KeyValuePair<PieceRef, Share>> lines, Func<Share, decimal> kind) =>
        LargestRemainder.Round(lines.Select(line => kind(line.Value)).ToList(), Cent);

    private void AddPasses(Saw saw, Blade blade, BarWork bar)
    {
        foreach (var bundle in bar.Bundles)
        {
            foreach (var pass in bundle.Passes)
            {
                if (pass.Cut.Piece is not { } piece)
                    continue;
                AddTime(piece, saw, pass.Time.Total * bundle.Times);
                Of(piece).Blade += BladeCost(blade, pass) * bundle.Times;
            }
        }
    }

    private void AddBar(Saw saw, Blade blade, BarWork bar)
    {
        var lengths = bar.Layout.Cuts.Select(cut => (decimal)cut.Centerline.Nanometers).ToList();
        var material = problem.StockIsCosted ? LargestRemainder.Split(LayoutCost.MaterialMicros(bar.Layout), lengths) : new long[lengths.Count];
        var seconds = bar.Bundles.Sum(bundle => bundle.Times * (bundle.Load.Total + bundle.RemainderHandling.Total + TrimsOf(bundle).Sum(pass => pass.Time.Total)));
        var bladeCost = bar.Bundles.Sum(bundle => bundle.Times * TrimsOf(bundle).Sum(pass => BladeCost(blade, pass)));
        var handling = problem.Rates.HandlingCostPerBar.Amount + (problem.StockIsCosted ? (bar.Layout.Stock.PullCostMicros + bar.Layout.TransferCostMicros) / Million : 0m);
        for (var i = 0; i < lengths.Count; i++)
        {
            var part = lengths[i] / lengths.Sum();
            var share = Of(bar.Layout.Cuts[i].Piece);
            share.MaterialMicros += material[i];
            share.Blade += bladeCost * part;
            share.Handling += handling * part * bar.Layout.Repeat;
            AddTime(bar.Layout.Cuts[i].Piece, saw, seconds * part);
        }
    }

    private static IEnumerable<PassWork> TrimsOf(BundleWork bundle) => bundle.Passes.Where(pass => pass.Cut.Piece is null);

    private static decimal BladeCost(Blade blade, PassWork pass) => blade.Cost.Amount * pass.BladeShare / 1_000_000_000m;

    private void AddTime(PieceRef piece, Saw saw, decimal seconds)
    {
        var share = Of(piece);
        share.Seconds += seconds;
        share.Machine += saw.MachineCostPerHour.Amount * seconds / SecondsPerHour;
        share.Labor += problem.Rates.LaborCostPerHour.Amount * seconds / SecondsPerHour;
    }

    private Share Of(PieceRef piece)
    {
        if (!shares.TryGetValue(piece, out var share))
            shares.Add(piece, share = new());
        return share;
    }

    /// <summary>Unrounded costs and time of one line.</summary>
    private sealed class Share
    {
        public long MaterialMicros { get; set; }

        public decimal Seconds { get; set; }

        public decimal Machine { get; set; }

        public decimal Labor { get; set; }

        public decimal Blade { get; set; }

        public decimal Handling { get; set; }
    }
}
