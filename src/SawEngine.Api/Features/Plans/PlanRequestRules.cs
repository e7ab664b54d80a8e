using FluentValidation;
using FluentValidation.Results;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Plans;

/// <summary>Rules of a request for a plan that bounds on its members cannot state.</summary>
public sealed class PlanRequestRules : AbstractValidator<PlanRequest>
{
    public PlanRequestRules()
    {
        RuleFor(request => request.Currency).IsCurrency();
        RuleFor(request => request.TimeZone).IsTimeZone();
        RuleFor(request => request.PlanStart).IsPlanStart();
        this.Unique(request => request.Orders, order => order.OrderId, nameof(OrderJson.OrderId));
        this.Unique(request => request.Sections, section => section.SectionId, nameof(SectionJson.SectionId));
        this.Unique(request => request.Grades, grade => grade.GradeId, nameof(GradeJson.GradeId));
        this.Unique(request => request.Stock, item => item.StockId, nameof(StockItemJson.StockId));
        this.CostOnAllOrNone(request => request.Stock, item => item.Cost);
        RuleFor(request => request.Orders).Custom(CheckTotals);
        RuleFor(request => request.Orders).Custom((orders, context) => CheckDates(orders, context.InstanceToValidate.PlanStart, context));
        RuleForEach(request => request.Sections).SetValidator(new SectionRules());
        RuleForEach(request => request.Grades).SetValidator(new GradeRules());
        RuleForEach(request => request.Orders).SetValidator(new OrderRules());
        RuleForEach(request => request.Stock).SetValidator(new StockItemRules());
        RuleFor(request => request.Shop).SetValidator(new ShopRules());
        RuleFor(request => request.Shop).Custom((shop, context) => context.CheckFirstDays(shop, context.InstanceToValidate.PlanStart));
    }

    protected override bool PreValidate(ValidationContext<PlanRequest> context, ValidationResult result)
    {
        var request = context.InstanceToValidate;
        context.SetMaterials(new(request.Sections, request.Grades, new(request.LengthUnit)));
        return true;
    }

    private static void CheckTotals(IReadOnlyList<OrderJson> orders, ValidationContext<PlanRequest> context)
    {
        var lines = orders.Sum(order => order.Lines.Count);
        if (lines > PlanLimits.Lines)
            context.Fault("", FaultCode.TooMany, $"All orders together may have at most {PlanLimits.Lines} lines, but have {lines}.");
        var pieces = orders.SelectMany(order => order.Lines).Sum(line => Math.Max(0L, line.Quantity) + Math.Max(0L, line.Over));
        if (pieces > Limits.TotalQuantity)
            context.Fault("", FaultCode.TooMuchWork, $"All orders together may have at most {Limits.TotalQuantity} pieces, but have {pieces}.");
    }

    private static void CheckDates(IReadOnlyList<OrderJson> orders, DateTimeOffset planStart, ValidationContext<PlanRequest> context)
    {
        for (var i = 0; i < orders.Count; i++)
        {
            context.CheckDate(orders[i].Due, planStart, $"[{i}].{nameof(OrderJson.Due)}");
            context.CheckDate(orders[i].Release, planStart, $"[{i}].{nameof(OrderJson.Release)}");
        }
    }
}
