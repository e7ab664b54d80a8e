using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>Rules of a shift: it and its breaks run forward within one day.</summary>
public sealed class ShiftRules : AbstractValidator<ShiftJson>
{
    public ShiftRules()
    {
        RuleFor(shift => shift.Days)
            .Must(days => days.Distinct().Count() == days.Count)
            .WithFault(FaultCode.RepeatedDay, "Name each day once.");
        RuleFor(shift => shift.End)
            .Must((shift, end) => shift.Start.IsBeforeEnd(end))
            .WithFault(FaultCode.ShiftEndsBeforeItBegins, "A shift ends after it begins, on the same day. Give one over midnight as two: the first until 00:00, the second from 00:00 on the next day.");
        RuleFor(shift => shift.Breaks).Custom((breaks, context) => CheckBreaks(context.InstanceToValidate, context));
    }

    private static void CheckBreaks(ShiftJson shift, ValidationContext<ShiftJson> context)
    {
        for (var i = 0; i < shift.Breaks.Count; i++)
        {
            var pause = shift.Breaks[i];
            if (!pause.Start.IsBeforeEnd(pause.End))
                context.Fault($"[{i}].End", FaultCode.BreakEndsBeforeItBegins, "A break ends after it begins.");
            else if (shift.Start.IsBeforeEnd(shift.End) && (pause.Start < shift.Start || pause.End.AsEnd() > shift.End.AsEnd()))
                context.Fault($"[{i}]", FaultCode.BreakOutsideShift, "A break lies inside its shift.");
            else if (shift.Breaks.Take(i).Any(other => pause.Start.AsStart() < other.End.AsEnd() && other.Start.AsStart() < pause.End.AsEnd()))
                context.Fault($"[{i}]", FaultCode.BreaksOverlap, "This break overlaps one before it in the list.");
        }
    }
}
