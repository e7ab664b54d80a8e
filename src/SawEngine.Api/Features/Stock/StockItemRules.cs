using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.Stock;

/// <summary>Rules of a stock item that bounds on its members cannot state.</summary>
public sealed class StockItemRules : AbstractValidator<StockItemJson>
{
    public StockItemRules()
    {
        RuleFor(item => item.Section).IsKnownSection();
        RuleFor(item => item.Grade).IsKnownGrade();
        RuleFor(item => item).Custom((item, context) =>
        {
            context.CheckZones(item.Zones, item.Quantity, item.Kind == StockKind.Remnant, item, context.Materials().Scale);
            context.CheckNominalLength(item.NominalLength, item, context.Materials().Scale);
        });
        RuleFor(item => item)
            .Must(item => item.Kind != StockKind.Bar || item.Quantity is not null)
            .WithFault(FaultCode.QuantityRequired, "State how many of these bars are on hand in `quantity`.");
        RuleFor(item => item.Quantity)
            .Must((item, quantity) => item.Kind != StockKind.Remnant || quantity is null or 1)
            .WithFault(FaultCode.RemnantIsSingle, "A remnant is one piece: leave `quantity` out, or list each remnant with its own id.");
        RuleFor(item => item.LeadDays)
            .Must((item, days) => item.Kind == StockKind.Purchasable || days is null)
            .WithFault(FaultCode.LeadDaysNotUsed, "Only purchasable stock has `leadDays`; what is on hand is there.");
    }
}
