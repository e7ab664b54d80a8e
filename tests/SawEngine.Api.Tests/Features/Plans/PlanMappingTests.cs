using System.Text.Json.Nodes;
using SawEngine.Api.Features.Plans;
using SawEngine.Core;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Tests.Features.Plans;

public sealed class PlanMappingTests
{
    [Fact]
    public void Everything_stands_in_canonical_order()
    {
        var problem = Map(PlanExample.Copy()).Problem;
        Assert.Equal(["SO-1/10", "SO-2/10", "SO-2/20"], problem.Orders.SelectMany(order => order.Lines).Select(line => line.Ref.ToString()));
        Assert.Equal(["A", "B", "C"], problem.Stock.Select(item => item.StockId));
        Assert.Equal(["saw-1", "saw-2"], problem.Saws.Select(saw => saw.Saw.SawId));
        Assert.Equal(["34x1.1-4/6", "34x1.1-5/8"], problem.Saws[1].Saw.Blades.Select(blade => blade.BladeId));
    }

    [Fact]
    public void Order_of_the_request_makes_no_difference()
    {
        var shuffled = PlanExample.With(r =>
        {
            foreach (var list in new[] { r["orders"]!, r["stock"]!, r["shop"]!["saws"]!, r["shop"]!["blades"]!, r["orders"]![0]!["lines"]!, r["shop"]!["saws"]![0]!["bladeIds"]! })
                Reverse(list.AsArray());
        });
        var (a, b) = (PlanReading.Read(PlanExample.Copy()), PlanReading.Read(shuffled));
        Assert.Equal(Api.Wire.Canonical.RequestDigest.Of(a), Api.Wire.Canonical.RequestDigest.Of(b));
        var (p, q) = (PlanMapping.Of(a).Problem, PlanMapping.Of(b).Problem);
        Assert.Equal(p.Orders.SelectMany(order => order.Lines), q.Orders.SelectMany(order => order.Lines));
        Assert.Equal(p.Stock, q.Stock);
        Assert.Equal(p.Saws.SelectMany(saw => saw.Saw.Blades), q.Saws.SelectMany(saw => saw.Saw.Blades));
        Assert.Equal(p.Saws.SelectMany(saw => saw.Schedule.Windows), q.Saws.SelectMany(saw => saw.Schedule.Windows));
    }

    [Fact]
    public void Order_lines_are_mapped_member_by_member()
    {
        var line = Map(PlanExample.Copy()).Problem.Orders[1].Lines[1];
        Assert.Equal(new PieceRef("SO-2", "20"), line.Ref);
        Assert.Equal("IPE 200", line.Section!.Designation);
        Assert.Equal("S355J2", line.Grade!.Designation);
        Assert.Equal(2_350_000_000, line.Length.Nanometers);
        Assert.Equal(LengthAt.LongSide, line.LengthAt);
        Assert.Equal(3, line.Quantity);
        Assert.Equal(EndCut.Square, line.FirstEnd);
        Assert.Equal(new EndCut(Angle.Zero, new Angle(30_000)), line.SecondEnd);
        Assert.Equal((Certificate.None, HeatRule.Any, null), (line.Certificate, line.HeatRule, line.Heat));
        var named = Map(PlanExample.Copy()).Problem.Orders[1].Lines[0];
        Assert.Equal((Certificate.Type31, HeatRule.Named, "H1"), (named.Certificate, named.HeatRule, named.Heat));
    }

    [Fact]
    public void Substitutes_are_grades_of_the_request_or_the_catalog_each_once_and_not_the_own()
    {
        var line = Map(PlanExample.With(r => r["orders"]![0]!["lines"]![0]!["substitutes"] = new JsonArray("my steel", "S355J2", "1.0577", "S275JR", "1.0044"))).Problem.Orders[1].Lines[1];
        Assert.Equal(["S275JR", "my steel"], line.Substitutes.Select(grade => grade.Designation));
    }

    [Fact]
    public void Own_sections_and_grades_are_the_callers()
    {
        var line = Map(PlanExample.Copy()).Problem.Orders[1].Lines[0];
        Assert.Equal(("my flat", 960m, Confidence.Caller), (line.Section!.Designation, line.Section.Area.SquareMillimeters, line.Section.Confidence));
        Assert.Equal(("my steel", 140m, Confidence.Caller), (line.Grade!.Designation, line.Grade.HighestHardnessHb, line.Grade.Density.Confidence));
    }

    [Fact]
    public void Own_section_takes_the_place_of_the_catalogs_whatever_way_that_is_written()
    {
        var problem = Map(PlanExample.With(r =>
        {
            r["sections"]!.AsArray().Add(JsonNode.Parse("""{"sectionId": "IPE 200", "shape": "iBeam", "height": 200, "width": 100, "web": 6, "flange": 9}"""));
            r["orders"]![0]!["lines"]![0]!["section"] = "ipe200";
        })).Problem;
        Assert.Equal(Confidence.Caller, problem.Orders[1].Lines[1].Section!.Confidence);
        Assert.Same(problem.Stock[2].Section, problem.Orders[1].Lines[1].Section);
    }

    [Fact]
    public void Other_ways_to_write_a_designation_meet_the_same_stock()
    {
        var problem = Map(PlanExample.With(r => { r["orders"]![0]!["lines"]![0]!["section"] = "ipe200"; r["orders"]![0]!["lines"]![0]!["grade"] = "1.0577"; })).Problem;
        Assert.Equal(problem.Stock[2].Section, problem.Orders[1].Lines[1].Section);
        Assert.Equal(problem.Stock[2].Grade, problem.Orders[1].Lines[1].Grade);
    }

    [Fact]
    public void Stock_is_mapped_member_by_member()
    {
        var stock = Map(PlanExample.Copy()).Problem.Stock;
        Assert.Equal((StockKind.Remnant, 1, EndCondition.Sawn, 45_600_000L, 0), (stock[0].Kind, stock[0].Quantity, stock[0].EndCondition, stock[0].CostMicros, stock[0].LeadDays));
        Assert.Equal((StockKind.Bar, 3, EndCondition.Sheared, 148_000_000L, "H1", Certificate.Type31),
            (stock[1].Kind, stock[1].Quantity, stock[1].EndCondition, stock[1].CostMicros, stock[1].Heat, stock[1].Certificate));
        Assert.Equal((StockKind.Purchasable, null, 2), (stock[2].Kind, stock[2].Quantity, stock[2].LeadDays));
    }

    [Fact]
    public void Stock_without_costs_costs_its_length()
    {
        var problem = Map(PlanExample.With(r =>
        {
            foreach (var item in r["stock"]!.AsArray())
                item!.AsObject().Remove("cost");
        })).Problem;
        Assert.False(problem.StockIsCosted);
        Assert.All(problem.Stock, item => Assert.Equal(item.Length.Nanometers, item.CostMicros));
        Assert.True(Map(PlanExample.Copy()).Problem.StockIsCosted);
    }

    [Fact]
    public void Stock_of_which_nothing_is_there_is_left_out() =>
        Assert.Equal(["A", "C"], Map(PlanExample.With(r => r["stock"]![0]!["quantity"] = 0)).Problem.Stock.Select(item => item.StockId));

    [Theory]
    [InlineData("0.015625", 396_875)] // 1/64 in
    [InlineData("236.234375", 6_000_353_125)] // 19 ft 8 15/64 in
    [InlineData("0.000005", 127)] // the grid
    [InlineData("1", 25_400_000)]
    public void Inches_are_exact(string inches, long nanometers)
    {
        var problem = Map(PlanExample.With(r => { r["lengthUnit"] = "in"; r["stock"]![0]!["length"] = JsonNode.Parse(inches); })).Problem;
        Assert.Equal(nanometers, problem.Stock[1].Length.Nanometers);
    }

    [Fact]
    public void Inches_finer_than_the_grid_are_refused() =>
        Assert.Equal(["#/stock/0/length too_fine"], PlanReading.FaultsOf(PlanExample.With(r => { r["lengthUnit"] = "in"; r["stock"]![0]!["length"] = 1.000001m; })));

    [Fact]
    public void Shop_is_mapped_member_by_member()
    {
        var problem = Map(PlanExample.Copy()).Problem;
        Assert.Equal((10m, 15m, 20m), (problem.Trim[EndCondition.Sheared].Millimeters, problem.Trim[EndCondition.FlameCut].Millimeters, problem.Trim[EndCondition.Rolled].Millimeters));
        Assert.Equal((600m, 0.8m), (problem.Remnants!.KeepFrom.Millimeters, problem.Remnants.ValueFraction));
        Assert.Equal((42m, 2.5m, 0.2m), (problem.Rates.LaborCostPerHour.Amount, problem.Rates.HandlingCostPerBar.Amount, problem.Rates.ScrapValuePerKilogram.Amount));
        Assert.Equal(Effort.Quick, problem.Effort);
        var saw = problem.Saws[1].Saw;
        Assert.Equal(new SawCapacity(Mm(410), Mm(460), Mm(410)), saw.Capacity);
        Assert.Equal((45_000, 60_000), (saw.MiterRange!.Left.Millidegrees, saw.MiterRange.Right.Millidegrees));
        Assert.Equal((18m, 120m, 40m), (saw.SlowestBladeSpeed.MetersPerMinute, saw.FastestBladeSpeed.MetersPerMinute, saw.BaseBladeSpeed!.Value.MetersPerMinute));
        Assert.Equal((4m, 0.8m, 900m, 1.1m), (saw.MotorPowerKilowatts, saw.DriveEfficiency, saw.FastestBladeFeedMillimetersPerMinute, saw.RateFactor));
        Assert.Equal((Mm(3000), Mm(120), Mm(10), Mm(9000), Mm(5), Mm(450)), (saw.BarFeedStroke, saw.Tail, saw.ShortestPiece, saw.LongestPiece, saw.ThinnestSlice, saw.WheelDiameter));
        Assert.Equal((4000m, "34x1.1-5/8", 48m, true), (saw.LoadLimit.Kilograms, saw.MountedBladeId, saw.MachineCostPerHour.Amount, saw.Coolant));
        Assert.Equal(100m, saw.Times.LoadSecondsPerBar);
        var blade = saw.Blades[1];
        Assert.Equal((Mm(34), Mm(1.1m), Mm(1.6m), 5m, 8m), (blade.Width, blade.Thickness, blade.Kerf, blade.CoarsestTeethPerInch, blade.FinestTeethPerInch));
        Assert.Equal((95m, 6.5m, 0.5m), (blade.Cost.Amount, blade.LifeAreaSquareMeters, blade.RemainingLife));
    }

    [Fact]
    public void Saw_is_not_attended_in_its_downtime()
    {
        var saws = Map(PlanExample.Copy()).Problem.Saws;
        // Tuesday 06:00 is 86,400 s after the start; down from 10:00 to 12:00, break from 12:00 to 12:30.
        Assert.Contains(saws[0].Schedule.Windows, window => window.Start == 86_400 + 13_500 && window.End == 86_400 + 21_600);
        Assert.Contains(saws[1].Schedule.Windows, window => window.Start == 86_400 + 13_500 && window.End == 86_400 + 14_400);
        Assert.DoesNotContain(saws[1].Schedule.Windows, window => window.Start < 86_400 + 23_400 && window.End > 86_400 + 14_400);
    }

    [Fact]
    public void Every_default_of_a_least_saw_is_used_and_echoed()
    {
        var mapping = Map(PlanExample.Copy());
        var saw = mapping.Problem.Saws[0].Saw;
        var defaults = SawDefaults.For(saw.Capacity);
        var echoed = mapping.Defaults.Where(value => value.SawId == "saw-1").ToList();
        Assert.Equal(
            [.. defaults.Values.Select(value => (value.Name, value.Value, value.Source)).Append(("bladeIds", 10m, DefaultBlades.Source)).OrderBy(value => value.Item1, StringComparer.Ordinal)],
            echoed.Select(value => (value.Name, value.Value, value.Source)));
        Assert.Equal(defaults.Times, saw.Times);
        Assert.Equal((defaults.MotorPowerKilowatts, defaults.LoadLimit, defaults.BarFeedStroke, defaults.DriveEfficiency), (saw.MotorPowerKilowatts, saw.LoadLimit, saw.BarFeedStroke, saw.DriveEfficiency));
        Assert.Equal(DefaultBlades.For(saw.Capacity).Select(blade => blade.BladeId).Order(StringComparer.Ordinal), saw.Blades.Select(blade => blade.BladeId));
    }

    [Fact]
    public void What_a_saw_states_is_no_default()
    {
        var names = Map(PlanExample.Copy()).Defaults.Where(value => value.SawId == "saw-2").Select(value => value.Name).ToList();
        Assert.DoesNotContain("times.loadSecondsPerBar", names);
        Assert.DoesNotContain("motorPowerKw", names);
        Assert.Equal(9, names.Count);
        Assert.All(names, name => Assert.StartsWith("times.", name, StringComparison.Ordinal));
    }

    [Fact]
    public void Default_lengths_are_echoed_in_the_unit_of_the_request()
    {
        var stroke = Map(PlanExample.With(r => r["lengthUnit"] = "in")).Defaults.Single(value => value.SawId == "saw-1" && value.Name == "barFeedStroke");
        Assert.Equal((19.685039m, "in"), (stroke.Value, stroke.Unit));
    }

    [Fact]
    public void Ambiguous_grade_is_warned_about_once()
    {
        var mapping = Map(PlanExample.With(r => { r["stock"]![0]!["grade"] = "42CrMo4"; r["stock"]![1]!["grade"] = "42CrMo4"; }));
        var warning = Assert.Single(mapping.Warnings, warning => warning.Code != "cost_not_stated");
        Assert.Equal(("ambiguous_grade", "#/stock/0/grade"), (warning.Code, warning.Pointer));
        Assert.Contains("read as the hardest, 42CrMo4+QT;", warning.Detail, StringComparison.Ordinal);
        Assert.True(mapping.Problem.Stock[0].Grade!.LowestHardnessHb > 250, "The harder condition is taken: 4140 pre-hard, 28 to 32 HRC.");
    }

    [Fact]
    public void Costs_that_a_priced_plan_leaves_out_are_warned_of()
    {
        var warning = Assert.Single(Map(PlanExample.With(_ => { })).Warnings);
        Assert.Equal(("cost_not_stated", "#/shop"), (warning.Code, warning.Pointer));
        Assert.Contains("too low: `machineCostPerHour` of saws `saw-1`; `cost` of blades `34x1.1-4/6`.", warning.Detail, StringComparison.Ordinal);

        var withoutLabor = Assert.Single(Map(PlanExample.With(r => r["shop"]!["rates"]!.AsObject().Remove("laborCostPerHour"))).Warnings);
        Assert.Contains("too low: `rates.laborCostPerHour`; ", withoutLabor.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void Costs_are_not_missed_where_nothing_is_priced() => Assert.Empty(Map(PlanExample.With(r =>
    {
        foreach (var item in r["stock"]!.AsArray())
            item!.AsObject().Remove("cost");
    })).Warnings);

    private static PlanMapping Map(JsonNode request) => PlanMapping.Of(PlanReading.Read(request));

    private static Length Mm(decimal value) => Length.FromMillimeters(value);

    private static void Reverse(JsonArray list)
    {
        var items = list.Reverse().Select(item => item!.DeepClone()).ToList();
        list.Clear();
        foreach (var item in items)
            list.Add(item);
    }
}
