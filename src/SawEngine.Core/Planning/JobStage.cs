using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;

namespace SawEngine.Core.Planning;

/// <summary>
/// Makes cutting jobs of the nests: bars of one grade with the same earliest promise and the same release are cut together, in jobs of at most about half a shift on the
/// saw that is quickest, so that several saws can share the work.
/// </summary>
internal sealed class JobStage(PlanProblem problem)
{
    // Half a shift of eight hours; common practice, no source.
    private const decimal LongestJobSeconds = 4 * 3600;

    private readonly Dictionary<string, SalesOrder> orders = problem.Orders.ToDictionary(order => order.OrderId, StringComparer.Ordinal);
    private readonly Dictionary<PieceRef, OrderLine> lines = problem.Orders.SelectMany(order => order.Lines).ToDictionary(line => line.Ref);
    private readonly Dictionary<string, int> layoutsOfStock = new(StringComparer.Ordinal);
    private readonly List<JobDraft> jobs = [];

    /// <summary>The jobs of all nests; layouts that no saw of their class may cut are given back.</summary>
    public IReadOnlyList<JobDraft> Run(IEnumerable<GroupNest> nests, out IReadOnlyList<BarLayout> refused)
    {
        var refusedLayouts = new List<BarLayout>();
        foreach (var nest in nests)
        {
            var bars = nest.Layouts.Select(layout => Prepare(nest, layout)).ToList();
            refusedLayouts.AddRange(bars.Where(bar => bar.OnSaw.Count == 0).Select(bar => bar.Layout));
            foreach (var bucket in bars.Where(bar => bar.OnSaw.Count > 0).GroupBy(bar => (bar.Due, bar.Release, Grade: bar.Layout.Stock.Grade!.Designation))
                .OrderBy(bucket => (bucket.Key.Due, bucket.Key.Release)).ThenBy(bucket => bucket.Key.Grade, StringComparer.Ordinal))
            {
                AddJobs(nest, bucket.Key.Release, bucket);
            }
        }
        refused = refusedLayouts;
        return jobs;
    }

    private PreparedBar Prepare(GroupNest nest, BarLayout layout)
    {
        var pieces = layout.Cuts.Select(cut => new PlacedPiece(lines[cut.Piece], cut.Turn)).ToList();
        var laid = nest.SawClass!.Settings.Where(setting => setting.Grade.Equals(layout.Stock.Grade)).Select(setting => setting.Laid(layout, pieces, problem)).OfType<LaidBar>()
            .ToDictionary(onSaw => onSaw.Setting.Saw.SawId, StringComparer.Ordinal);
        var served = layout.Cuts.Select(cut => orders[cut.Piece.OrderId]).ToList();
        return new(layout, laid, served.Min(order => order.Due) is { } due ? SecondsFromStart(due) : long.MaxValue, ReleaseOf(layout, served));
    }

    private long ReleaseOf(BarLayout layout, IEnumerable<SalesOrder> served)
    {
        var material = layout.Stock.LeadDays * 86_400L;
        return served.Max(order => order.Release is { } release ? Math.Max(material, SecondsFromStart(release)) : material);
    }

    private long SecondsFromStart(DateTimeOffset instant) => (long)Math.Ceiling((instant - problem.PlanStart).TotalSeconds);

    private void AddJobs(GroupNest nest, long release, IEnumerable<PreparedBar> bars)
    {
        var open = new OpenJob();
        foreach (var bar in bars)
        {
            var left = bar.Layout.Repeat;
            while (left > 0)
            {
                if (!open.Accepts(bar))
                {
                    Close(nest, release, open);
                    open = new();
                }
                var taken = Math.Min(left, open.Room(bar));
                open.Add(bar, taken);
                left -= taken;
            }
        }
        Close(nest, release, open);
    }

    private void Close(GroupNest nest, long release, OpenJob open)
    {
        if (open.Bars.Count == 0)
            return;
        var bars = open.Bars.Select(bar => (LayoutId: NextLayoutId(bar.Bar.Layout), Layout: bar.Bar.Layout with { Repeat = bar.Repeat })).ToList();
        var onSaw = open.SawIds.ToDictionary(
            sawId => sawId,
            sawId => (IReadOnlyList<BarWork>)open.Bars.Select(bar => bar.Bar.OnSaw[sawId].Work(bar.Repeat)).ToList(),
            StringComparer.Ordinal);
        jobs.Add(new($"J{jobs.Count + 1}", nest, bars, Math.Max(0, release), onSaw));
    }

    private string NextLayoutId(BarLayout layout)
    {
        var number = layoutsOfStock.GetValueOrDefault(layout.Stock.StockId) + 1;
        layoutsOfStock[layout.Stock.StockId] = number;
        return $"{layout.Stock.StockId}.{number}";
    }

    /// <summary>A layout as it lies on each saw that may cut it, its earliest promise and its release.</summary>
    private sealed record PreparedBar(BarLayout Layout, IReadOnlyDictionary<string, LaidBar> OnSaw, long Due, long Release)
    {
        private readonly BarWork? quickest = OnSaw.OrderBy(onSaw => onSaw.Key, StringComparer.Ordinal).Select(onSaw => onSaw.Value.Work(Layout.Repeat)).MinBy(work => work.Total.Total);

        public decimal SecondsPerBar => quickest is null ? 0m : quickest.Total.Total / Layout.Repeat;

        /// <summary>Bars that the quickest saw cuts together.</summary>
        public int BarsTogether => quickest?.Layout.Bundle.Bars ?? 1;
    }

    /// <summary>A job that is being filled.</summary>
    private sealed class OpenJob
    {
        private decimal seconds;

        public List<(PreparedBar Bar, int Repeat)> Bars { get; } = [];

        public IReadOnlyList<string> SawIds { get; private set; } = [];

        public bool Accepts(PreparedBar bar) =>
            Bars.Count == 0 || (seconds + bar.SecondsPerBar <= LongestJobSeconds && SawIds.Any(bar.OnSaw.ContainsKey));

        /// <summary>How many bars go in, at least one; whole bundles where one goes in.</summary>
        public int Room(PreparedBar bar)
        {
            var bars = (int)Math.Clamp(decimal.Floor((LongestJobSeconds - seconds) / Math.Max(bar.SecondsPerBar, 1m)), 1m, int.MaxValue);
            return bars > bar.BarsTogether ? bars - bars % bar.BarsTogether : bars;
        }

        public void Add(PreparedBar bar, int repeat)
        {
            SawIds = (Bars.Count == 0 ? bar.OnSaw.Keys.Order(StringComparer.Ordinal) : SawIds.Where(bar.OnSaw.ContainsKey)).ToList();
            Bars.Add((bar, repeat));
            seconds += bar.SecondsPerBar * repeat;
        }
    }
}
