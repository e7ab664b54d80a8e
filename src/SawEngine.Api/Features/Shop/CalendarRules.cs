using FluentValidation;
using SawEngine.Api.Features.Shop.Recurrences;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>Rules of a calendar.</summary>
public sealed class CalendarRules : AbstractValidator<CalendarJson>
{
    public CalendarRules()
    {
        RuleForEach(calendar => calendar.Shifts).SetValidator(new ShiftRules());
        RuleForEach(calendar => calendar.Overtime).SetValidator(new ShiftRules());
        RuleForEach(calendar => calendar.RecurringShifts).SetValidator(new RecurrenceRules());
        RuleForEach(calendar => calendar.RecurringHolidays).SetValidator(new RecurrenceRules());
        RuleFor(calendar => calendar.Closures).Custom((closures, context) =>
        {
            for (var i = 0; i < closures.Count; i++)
            {
                if (closures[i].LastDay < closures[i].FirstDay)
                    context.Fault($"[{i}].LastDay", FaultCode.ClosureEndsBeforeItBegins, "The last day of a closure is not before its first.");
            }
        });
    }
}
