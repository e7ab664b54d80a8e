using FluentValidation;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Orders;

/// <summary>Rules of an order that bounds on its members cannot state.</summary>
public sealed class OrderRules : AbstractValidator<OrderJson>
{
    public OrderRules()
    {
        this.Unique(order => order.Lines, line => line.LineId, nameof(OrderLineJson.LineId));
        RuleForEach(order => order.Lines).SetValidator(new OrderLineRules());
    }
}
