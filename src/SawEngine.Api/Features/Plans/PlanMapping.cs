using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Core.Planning;

namespace SawEngine.Api.Features.Plans;

/// <summary>A request for a plan from wire to trade; the rules have passed.</summary>
/// <param name="Problem">What the planner gets.</param>
/// <param name="Clock">Turns the planner's seconds into times.</param>
/// <param name="Materials">What the names of sections and grades stand for.</param>
/// <param name="Scale">Reads and writes lengths in the unit of the request.</param>
/// <param name="Defaults">What the engine filled in, by saw and member.</param>
/// <param name="Warnings">What the caller should know about the request.</param>
public sealed record PlanMapping(
    PlanProblem Problem, PlanClock Clock, Materials Materials, LengthScale Scale, IReadOnlyList<DefaultJson> Defaults, IReadOnlyList<WarningJson> Warnings)
{
    /// <summary>Everything in canonical order, whatever the order of the request.</summary>
    public static PlanMapping Of(PlanRequest request)
    {
        var scale = new LengthScale(request.LengthUnit);
        var clock = PlanClock.Of(request.PlanStart, request.TimeZone);
        var materials = new Materials(request.Sections, request.Grades, scale);
        var saws = request.Shop.ToSaws(scale);
        var shop = new ScheduledShop(request.Shop, saws, clock, materials.SectionName);
        var problem = new PlanProblem
        {
            PlanStart = request.PlanStart,
            Orders = request.Orders.ToSalesOrders(scale, materials),
            Stock = request.Stock.ToStockItems(scale, materials),
            StockIsCosted = request.Stock.IsCosted(),
            Saws = [.. saws.Zip(shop.Saws, (saw, schedule) => new PlanSaw(saw.Saw, schedule))],
            Operators = shop.Operators,
            Cranes = shop.Cranes,
            WalkingSeconds = request.Shop.WalkingSeconds,
            Rates = request.Shop.Rates.ToRates(),
            Trim = request.Shop.Trim.ToTrim(scale),
            Remnants = request.Shop.Remnants.ToRules(scale, request.Stock.IsCosted()),
            Effort = request.Effort,
        };
        return new(problem, clock, materials, scale, saws.ToDefaults(scale), [.. materials.AmbiguousGrades(GradesOf(request)), .. request.Shop.Warnings(request.Stock.IsCosted())]);
    }

    private static IEnumerable<(string?, string)> GradesOf(PlanRequest request) =>
        request.Orders.SelectMany((order, i) => order.Lines.SelectMany((line, k) => line.GradeUses($"#/orders/{i}/lines/{k}"))).Concat(request.Stock.GradeUses());
}
