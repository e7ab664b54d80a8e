using FluentValidation;
using FluentValidation.Results;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Estimates;

/// <summary>Rules of a request for an estimate that bounds on its members cannot state.</summary>
public sealed class EstimateRequestRules : AbstractValidator<EstimateRequest>
{
    public EstimateRequestRules()
    {
        RuleFor(request => request.Currency).IsCurrency();
        this.Unique(request => request.Sections, section => section.SectionId, nameof(SectionJson.SectionId));
        this.Unique(request => request.Grades, grade => grade.GradeId, nameof(GradeJson.GradeId));
        this.Unique(request => request.Stock, item => item.StockId, nameof(StockItemJson.StockId));
        this.CostOnAllOrNone(request => request.Stock, item => item.Cost);
        RuleFor(request => request.Order.Lines).Custom((lines, context) => CheckWork(context.InstanceToValidate, context));
        RuleFor(request => request.PriceBreaks).Custom(CheckAscending);
        RuleForEach(request => request.Sections).SetValidator(new SectionRules());
        RuleForEach(request => request.Grades).SetValidator(new GradeRules());
        RuleFor(request => request.Order).SetValidator(new OrderRules());
        RuleForEach(request => request.Stock).SetValidator(new StockItemRules());
        RuleFor(request => request.Shop).SetValidator(new ShopRules());
    }

    protected override bool PreValidate(ValidationContext<EstimateRequest> context, ValidationResult result)
    {
        var request = context.InstanceToValidate;
        context.SetMaterials(new(request.Sections, request.Grades, new(request.LengthUnit)));
        return true;
    }

    private static void CheckWork(EstimateRequest request, ValidationContext<EstimateRequest> context)
    {
        var lines = request.Order.Lines;
        if (lines.Count > EstimateLimits.Lines)
            context.Fault("", FaultCode.TooMany, $"An estimate may have at most {EstimateLimits.Lines} lines, but has {lines.Count}.");
        var prices = lines.Count * request.PriceBreaks.Count;
        if (prices > EstimateLimits.Prices)
            context.Fault("", FaultCode.TooMuchWork, $"Lines times price breaks may be at most {EstimateLimits.Prices}, but are {prices}.");
        var pieces = lines.Sum(line => Math.Max(0L, line.Quantity) + Math.Max(0L, line.Over)) + lines.Count * request.PriceBreaks.Sum(quantity => (long)Math.Max(0, quantity));
        if (pieces > Limits.TotalQuantity)
            context.Fault("", FaultCode.TooMuchWork, $"All lines at all their quantities may have at most {Limits.TotalQuantity} pieces, but have {pieces}.");
    }

    private static void CheckAscending(IReadOnlyList<int> quantities, ValidationContext<EstimateRequest> context)
    {
        for (var i = 1; i < quantities.Count; i++)
        {
            if (quantities[i] <= quantities[i - 1])
                context.Fault($"[{i}]", FaultCode.QuantitiesNotAscending, $"Must be greater than {quantities[i - 1]}, the quantity before it, but is {quantities[i]}.");
        }
    }
}
