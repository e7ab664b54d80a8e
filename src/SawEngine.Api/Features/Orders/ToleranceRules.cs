using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Orders;

/// <summary>Rules of tolerances of length and quantity, which order lines and pieces of a nest share.</summary>
internal static class ToleranceRules
{
    /// <summary>The middle of a tolerance can be stated, and is the length of a piece.</summary>
    public static void CheckTolerance<T>(this ValidationContext<T> context, ToleranceJson tolerance, IStatedLength stated, LengthScale scale)
    {
        if (!scale.CanRead(stated) || !CanRead(tolerance, scale))
            return;
        if (scale.Read(tolerance.Minus) >= scale.Read(stated))
            context.Fault($"{nameof(OrderLineJson.Tolerance)}.{nameof(ToleranceJson.Minus)}", FaultCode.TooLarge, "Must be less than the length.");
        else if ((tolerance.Plus - tolerance.Minus) / 2 % LengthScale.Grid(scale.Unit) != 0)
            context.Fault(nameof(OrderLineJson.Tolerance), FaultCode.TooFine, $"The middle, half of `plus` less `minus`, must be a multiple of {ShortestDecimalConverter.Text(LengthScale.Grid(scale.Unit))}.");
    }

    /// <summary>Fewer pieces than all may be missing.</summary>
    public static void CheckUnder<T>(this ValidationContext<T> context, int under, int quantity)
    {
        if (under > 0 && under >= quantity)
            context.Fault(nameof(OrderLineJson.Under), FaultCode.TooLarge, $"Must be less than the quantity, {quantity}, but is {under}.");
    }

    /// <summary>Whether a tolerance is within bounds and on the grid.</summary>
    public static bool CanRead(ToleranceJson tolerance, LengthScale scale) =>
        tolerance is { Plus: >= 0, Minus: >= 0 } && scale.CanRead(tolerance.Plus) && scale.CanRead(tolerance.Minus);
}
