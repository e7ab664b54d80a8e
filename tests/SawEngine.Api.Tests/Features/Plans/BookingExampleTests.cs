using SawEngine.Api.Features.Plans;
using SawEngine.Core.CuttingData;
using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;
using SawEngine.Core.Planning;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Tests.Features.Plans;

/// <summary>The example of a booked day holds what its readers are told that it holds.</summary>
public sealed class BookingExampleTests
{
    private static readonly PlanRequest Request = PlanReading.Read(Repository.Read("docs", "examples", "booking.json"));
    private static readonly PlanMapping Mapping = PlanMapping.Of(Request);

    [Fact]
    public void It_is_of_the_size_of_a_day()
    {
        var lines = Mapping.Problem.Orders.SelectMany(order => order.Lines).ToList();
        Assert.True(Mapping.Problem.Orders.Count >= 4);
        Assert.True(lines.Count >= 25);
        Assert.True(lines.Select(line => line.Section).Distinct().Count() >= 8);
        Assert.True(lines.Select(line => line.Section!.Shape).Distinct().Count() >= 6);
        Assert.True(lines.Select(line => line.Grade).Distinct().Count() >= 5);
        Assert.True(lines.Sum(line => line.Quantity) > 100);
        Assert.Equal(60, Mapping.Problem.Stock.Where(item => item.Kind == StockKind.Bar).Sum(item => item.Quantity));
        Assert.Equal(3, Mapping.Problem.Stock.Where(item => item.Kind == StockKind.Bar).Select(item => item.Length).Distinct().Count());
        Assert.Equal(40, Mapping.Problem.Stock.Count(item => item.Kind == StockKind.Remnant));
        Assert.True(Mapping.Problem.StockIsCosted);
        Assert.Equal(3, Mapping.Problem.Saws.Count);
        Assert.Contains(lines, line => line.Certificate == Certificate.Type31);
        Assert.Contains(lines, line => line.HeatRule == HeatRule.Single);
        Assert.Contains(lines, line => line.SecondEnd.WidthAngle.Millidegrees == 30_000);
        Assert.Contains(lines, line => line.SecondEnd.WidthAngle.Millidegrees == -30_000);
        Assert.Empty(Mapping.Warnings);
    }

    [Fact]
    public void One_line_is_too_large_for_every_saw_and_one_longer_than_every_bar()
    {
        var problem = Mapping.Problem;
        var lines = problem.Orders.SelectMany(order => order.Lines).ToList();
        Assert.Equal(["SO-4104/20"], lines.Where(line => !problem.Saws.Any(saw => Cuts(saw, line))).Select(line => line.Ref.ToString()));
        Assert.Equal(["SO-4103/50"], lines.Where(line => !problem.Stock.Any(item => problem.Saws.Any(saw => Gives(item, saw, line)))).Select(line => line.Ref.ToString()));
    }

    private static bool Cuts(PlanSaw saw, OrderLine line) =>
        BladeChoice.Choose(line.Section!, line.Grade!, saw.Saw, [line.FirstEnd, line.SecondEnd]).Choice is not null;

    /// <summary>Whether one piece of a line can be laid on a bar under the rules of a saw, whatever the size of its section.</summary>
    private static bool Gives(StockItem item, PlanSaw saw, OrderLine line) =>
        item.Section!.Equals(line.Section)
        && item.Grade!.Equals(line.Grade)
        && (line.Certificate == Certificate.None || (item.Certificate >= line.Certificate && item.Certificate != Certificate.MillTestReport))
        && LayoutPositions.Lay(item, [line], new CutRules { Kerf = saw.Saw.Blades.Max(blade => blade.Kerf), Trim = Mapping.Problem.Trim, Tail = saw.Saw.Tail }, new(null, 0)) is not null;
}
