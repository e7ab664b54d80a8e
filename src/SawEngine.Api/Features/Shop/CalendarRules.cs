using FluentValidation;

namespace SawEngine.Api.Features.Shop;

/// <summary>Rules of a calendar.</summary>
public sealed class CalendarRules : AbstractValidator<CalendarJson>
{
    public CalendarRules() => RuleForEach(calendar => calendar.Shifts).SetValidator(new ShiftRules());
}
