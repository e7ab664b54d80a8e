using SawEngine.Core;
using SawEngine.Core.Grades;
using SawEngine.Core.Orders;
using SawEngine.Core.Planning;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Scheduling;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;
using SawEngine.Solvers.Nesting;
using SawEngine.Solvers.Scheduling;

namespace SawEngine.Solvers.Tests.Planning;

/// <summary>A small invented shop for tests of the planner: two unlike saws, one shift a day from 06:00 to 14:00 with a break, two orders.</summary>
internal static class Workshop
{
    public static readonly DateTimeOffset Start = new(2026, 11, 30, 6, 0, 0, TimeSpan.FromHours(1));

    public static Planner Planner => new(new ColumnNester(), new DispatchScheduler());

    public static Plan Plan(PlanProblem problem) => Planner.Plan(problem, CancellationToken.None);

    public static PlanProblem Problem(params SalesOrder[] orders) => new()
    {
        PlanStart = Start,
        Orders = orders.Length > 0 ? orders : [RoundsAndBeams, Beams],
        Stock = Stock,
        StockIsCosted = true,
        Saws = [new(Saw("saw-1", 410, 460, 120, 1.75m) with { MiterRange = new(Angle.FromDegrees(45), Angle.FromDegrees(60)) }, Week), new(Saw("saw-2", 260, 280, 80, 1.5m), Week)],
        Rates = new(new(42m), new(2.5m), new(0.2m)),
        Trim = new Dictionary<EndCondition, Length> { [EndCondition.Sheared] = Mm(10), [EndCondition.FlameCut] = Mm(15) },
        Remnants = new(Mm(600), 0.8m),
        Effort = Effort.Quick,
    };

    public static SalesOrder RoundsAndBeams => new()
    {
        OrderId = "SO-1",
        Due = Start.AddDays(2).AddHours(8),
        CostPerHourLate = new(25m),
        Lines =
        [
            Line("SO-1", "10", "Round 50", "C45", 245, 24),
            Line("SO-1", "20", "IPE 200", "S355J2", 2350, 3) with { LengthAt = LengthAt.LongSide, SecondEnd = new(Angle.Zero, Angle.FromDegrees(30)) },
        ],
    };

    public static SalesOrder Beams => new()
    {
        OrderId = "SO-2",
        Due = Start.AddDays(1).AddHours(6),
        CostPerHourLate = new(40m),
        Lines = [Line("SO-2", "10", "IPE 200", "S355J2", 1480, 6) with { Certificate = Certificate.Type31, HeatRule = HeatRule.Single }],
    };

    public static IReadOnlyList<StockItem> Stock =>
    [
        Bar("IPE200-12M", "IPE 200", "S355J2", 12_000, 5, 282m) with { EndCondition = EndCondition.Sheared, Heat = "H77120", Certificate = Certificate.Type31 },
        Bar("R50-6M", "Round 50", "C45", 6_000, 3, 148m) with { EndCondition = EndCondition.Sheared, Heat = "H81203", Certificate = Certificate.Type31 },
        Bar("RM-0417", "Round 50", "C45", 2_310, 1, 45.6m) with { Kind = StockKind.Remnant, Heat = "H79950" },
        Bar("RM-0532", "IPE 200", "S355J2", 5_230, 1, 98.3m) with { Kind = StockKind.Remnant, Heat = "H75544", Certificate = Certificate.Type22 },
    ];

    public static OrderLine Line(string orderId, string lineId, string section, string grade, decimal millimeters, int quantity) => new()
    {
        Ref = new(orderId, lineId),
        Section = Section(section),
        Grade = Grade(grade),
        Length = Mm(millimeters),
        Quantity = quantity,
    };

    public static SalesOrder Order(string orderId, params OrderLine[] lines) => new() { OrderId = orderId, Lines = lines };

    public static StockItem Bar(string stockId, string section, string grade, decimal millimeters, int quantity, decimal cost) => new()
    {
        StockId = stockId,
        Kind = StockKind.Bar,
        Section = Section(section),
        Grade = Grade(grade),
        Length = Mm(millimeters),
        Quantity = quantity,
        CostMicros = (long)(cost * 1_000_000m),
    };

    public static Saw Saw(string sawId, decimal round, decimal width, decimal tail, decimal kerf)
    {
        var capacity = new SawCapacity(Mm(round), Mm(width), Mm(round));
        var defaults = SawDefaults.For(capacity);
        return new()
        {
            SawId = sawId,
            Capacity = capacity,
            SlowestBladeSpeed = defaults.SlowestBladeSpeed,
            FastestBladeSpeed = defaults.FastestBladeSpeed,
            MotorPowerKilowatts = defaults.MotorPowerKilowatts,
            DriveEfficiency = defaults.DriveEfficiency,
            FastestBladeFeedMillimetersPerMinute = defaults.FastestBladeFeedMillimetersPerMinute,
            BarFeedStroke = defaults.BarFeedStroke,
            LoadLimit = defaults.LoadLimit,
            Tail = Mm(tail),
            Blades = DefaultBlades.For(capacity).Select(blade => blade with { Kerf = Mm(kerf), Cost = new(90m) }).OrderBy(blade => blade.BladeId, StringComparer.Ordinal).ToList(),
            MachineCostPerHour = new(48m),
            Accuracy = defaults.Accuracy,
            Times = defaults.Times,
        };
    }

    public static Length Mm(decimal millimeters) => Length.FromMillimeters(millimeters);

    private static IReadOnlyList<TimeWindow> Week { get; } = Enumerable.Range(0, 5)
        .SelectMany(day => new[] { new TimeWindow(day * 86_400L, day * 86_400L + 12_600), new TimeWindow(day * 86_400L + 13_500, day * 86_400L + 28_800) })
        .ToList();

    private static Section Section(string designation) => SectionCatalog.Standard.Find(designation) ?? throw new ArgumentException(designation);

    private static Grade Grade(string designation) => GradeCatalog.Standard.Find(designation) ?? throw new ArgumentException(designation);
}
