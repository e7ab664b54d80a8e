using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Core.Planning;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Estimates;

/// <summary>A request for an estimate from wire to trade; the rules have passed.</summary>
/// <param name="Problem">The whole order for the planner: no promise, and saws that are attended all the time.</param>
/// <param name="Materials">What the names of sections and grades stand for.</param>
/// <param name="Defaults">What the engine filled in, by saw and member.</param>
/// <param name="Warnings">What the caller should know about the request.</param>
internal sealed record EstimateMapping(PlanProblem Problem, Materials Materials, IReadOnlyList<DefaultJson> Defaults, IReadOnlyList<WarningJson> Warnings)
{
    // Fifty years without a pause; only the sums of the times are used.
    private static readonly IReadOnlyList<TimeWindow> AllTheTime = [new(0, 50L * 365 * 86_400)];

    /// <summary>Everything in canonical order, whatever the order of the request.</summary>
    public static EstimateMapping Of(EstimateRequest request)
    {
        var scale = new LengthScale(request.LengthUnit);
        var materials = new Materials(request.Sections, request.Grades, scale);
        var saws = request.Shop.ToSaws(scale);
        var json = request.Shop.Saws.ToDictionary(saw => saw.SawId, StringComparer.Ordinal);
        var order = request.Order with { Due = null, Release = null, CostPerHourLate = 0 };
        var problem = new PlanProblem
        {
            PlanStart = DateTimeOffset.UnixEpoch,
            Orders = new[] { order }.ToSalesOrders(scale, materials),
            Stock = [.. request.Stock.ToStockItems(scale, materials).Select(item => item with { LeadDays = 0 })],
            StockIsCosted = request.Stock.IsCosted(),
            Saws = [.. saws.Select(saw => new PlanSaw(saw.Saw, ScheduleSaw.Of(saw.Saw, AllTheTime).WithSetUps(json[saw.Saw.SawId], materials.SectionName)))],
            Rates = request.Shop.Rates.ToRates(),
            Trim = request.Shop.Trim.ToTrim(scale),
            Remnants = request.Shop.Remnants.ToRules(scale, request.Stock.IsCosted()),
            Effort = request.Effort,
        };
        var grades = request.Order.Lines.SelectMany((line, i) => line.GradeUses($"#/order/lines/{i}")).Concat(request.Stock.GradeUses());
        return new(problem, materials, saws.ToDefaults(scale), [.. materials.AmbiguousGrades(grades), .. request.Shop.Warnings(request.Stock.IsCosted())]);
    }

    /// <summary>Each line on its own at each quantity.</summary>
    public IEnumerable<(string LineId, int Quantity, PlanProblem Problem)> PriceBreaks(IReadOnlyList<int> quantities) =>
        Problem.Orders.SelectMany(order => order.Lines.SelectMany(line => quantities.Select(quantity =>
            (line.Ref.LineId, quantity, Problem with { Orders = [order with { Lines = [line with { Quantity = quantity, Under = 0, Over = 0 }] }] }))));
}
