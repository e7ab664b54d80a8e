using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.Planning;
using SawEngine.Core.Quantities;

namespace SawEngine.Api.Features.Plans;

/// <summary>A request for a plan from wire to trade; the rules have passed.</summary>
/// <param name="Problem">What the planner gets.</param>
/// <param name="Clock">Turns the planner's seconds into times.</param>
/// <param name="Scale">Reads and writes lengths in the unit of the request.</param>
/// <param name="Defaults">What the engine filled in, by saw and member.</param>
/// <param name="Warnings">What the caller should know about the request.</param>
public sealed record PlanMapping(
    PlanProblem Problem, PlanClock Clock, LengthScale Scale, IReadOnlyList<DefaultJson> Defaults, IReadOnlyList<WarningJson> Warnings)
{
    /// <summary>Everything in canonical order, whatever the order of the request.</summary>
    public static PlanMapping Of(PlanRequest request)
    {
        var scale = new LengthScale(request.LengthUnit);
        var clock = PlanClock.Of(request.PlanStart, request.TimeZone);
        var materials = new Materials(request.Sections, request.Grades, scale);
        var saws = request.Shop.ToSaws(scale);
        var attended = request.Shop.ToAttendedTimes(clock);
        var problem = new PlanProblem
        {
            PlanStart = request.PlanStart,
            Orders = request.Orders.ToSalesOrders(scale, materials),
            Stock = request.Stock.ToStockItems(scale, materials),
            StockIsCosted = request.Stock.IsCosted(),
            Saws = [.. saws.Select(saw => new PlanSaw(saw.Saw, attended[saw.Saw.SawId]))],
            Rates = request.Shop.Rates.ToRates(),
            Trim = request.Shop.Trim.ToTrim(scale),
            Remnants = request.Shop.Remnants.ToRules(scale),
            Effort = request.Effort,
        };
        return new(problem, clock, scale, [.. saws.SelectMany(saw => DefaultsOf(saw, scale))], AmbiguousGrades(request, materials));
    }

    private static IEnumerable<DefaultJson> DefaultsOf(SawMapping saw, LengthScale scale) =>
        saw.Defaults.OrderBy(value => value.Name, StringComparer.Ordinal).Select(value => ToJson(saw.Saw.SawId, value, scale));

    private static DefaultJson ToJson(string sawId, DefaultValue value, LengthScale scale)
    {
        var isLength = value.Unit == "mm";
        return new()
        {
            SawId = sawId,
            Name = value.Name,
            Value = isLength ? decimal.Round(scale.Write(Length.FromMillimeters(value.Value)), 6, MidpointRounding.ToEven) : value.Value,
            Unit = isLength ? WireEnum.Text(scale.Unit) : value.Unit.Length == 0 ? null : value.Unit,
            Source = value.Source,
            Confidence = WireEnum.Text(value.Confidence),
        };
    }

    private static List<WarningJson> AmbiguousGrades(PlanRequest request, Materials materials)
    {
        var warnings = new List<WarningJson>();
        var names = request.Orders.SelectMany(order => order.Lines).Select(line => line.Grade).Concat(request.Stock.Select(item => item.Grade));
        foreach (var name in names.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            if (materials.GradeMatch(name) is { IsAmbiguous: true } match)
            {
                var others = string.Join(", ", match.Alternatives.Select(grade => grade.Designation));
                warnings.Add(new() { Code = WarningCode.AmbiguousGrade, Detail = $"{name} names several conditions; the hardest is taken, {match.Grade.Designation}, not {others}." });
            }
        }
        return warnings;
    }
}
