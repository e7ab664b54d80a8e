using FluentValidation;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop.Recurrences;

/// <summary>Rules of what recurs: its lines can be read.</summary>
public sealed class RecurrenceRules : AbstractValidator<IRecurring>
{
    public RecurrenceRules() =>
        RuleFor(recurring => recurring.Recurrence).Custom((lines, context) => Recurrence.Read(lines, (line, fault) => context.Fault($"[{line}]", fault.Code, fault.Detail)));
}
