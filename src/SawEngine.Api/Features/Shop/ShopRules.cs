using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>Rules of a shop that bounds on its members cannot state.</summary>
public sealed class ShopRules : AbstractValidator<ShopJson>
{
    public ShopRules()
    {
        this.Unique(shop => shop.Saws, saw => saw.SawId, nameof(SawJson.SawId));
        this.Unique(shop => shop.Blades, blade => blade.BladeId, nameof(BladeJson.BladeId));
        this.Unique(shop => shop.Calendars, calendar => calendar.CalendarId, nameof(CalendarJson.CalendarId));
        RuleForEach(shop => shop.Saws).SetValidator(new SawRules());
        RuleForEach(shop => shop.Blades).SetValidator(new BladeRules());
        RuleForEach(shop => shop.Calendars).SetValidator(new CalendarRules());
        RuleFor(shop => shop.Remnants!).SetValidator(new RemnantRulesRules()).When(shop => shop.Remnants is not null);
        RuleFor(shop => shop).Custom(CheckReferences);
        RuleFor(shop => shop).Custom(CheckRecurrences);
        Include(new AttendanceRules());
    }

    private static void CheckReferences(ShopJson shop, ValidationContext<ShopJson> context)
    {
        var suggestionsLeft = Limits.FaultsReported;
        var blades = shop.Blades.Select(blade => blade.BladeId).ToHashSet(StringComparer.Ordinal);
        var calendars = shop.Calendars.Select(calendar => calendar.CalendarId).ToHashSet(StringComparer.Ordinal);
        for (var i = 0; i < shop.Saws.Count; i++)
        {
            var saw = shop.Saws[i];
            CheckCalendar(saw.CalendarId, $"{nameof(shop.Saws)}[{i}].{nameof(saw.CalendarId)}");
            CheckCalendar(saw.Unattended?.CalendarId, $"{nameof(shop.Saws)}[{i}].{nameof(saw.Unattended)}.{nameof(UnattendedJson.CalendarId)}");
            for (var j = 0; j < (saw.BladeIds?.Count ?? 0); j++)
            {
                if (!blades.Contains(saw.BladeIds![j]))
                    context.Fault($"{nameof(shop.Saws)}[{i}].{nameof(saw.BladeIds)}[{j}]", FaultCode.UnknownBlade, Unknown(saw.BladeIds[j], "blades", shop.Blades.Select(blade => blade.BladeId)));
            }
        }
        for (var i = 0; i < shop.Operators.Count; i++)
            CheckCalendar(shop.Operators[i].CalendarId, $"{nameof(shop.Operators)}[{i}].{nameof(OperatorJson.CalendarId)}");

        void CheckCalendar(string? id, string path)
        {
            if (id is not null && !calendars.Contains(id))
                context.Fault(path, FaultCode.UnknownCalendar, Unknown(id, "calendars", shop.Calendars.Select(calendar => calendar.CalendarId)));
        }

        // Only as many suggestions as can be reported: each compares with the whole list.
        string Unknown(string id, string list, IEnumerable<string> known) =>
            $"{Quoted.Text(id)} is not in the list of `{list}`.{(suggestionsLeft-- > 0 ? NearestName.Question(id, known) : "")}";
    }

    private static void CheckRecurrences(ShopJson shop, ValidationContext<ShopJson> context)
    {
        var count = shop.Calendars.Sum(calendar => calendar.RecurringShifts.Count + calendar.RecurringHolidays.Count) + shop.Saws.Sum(saw => saw.Maintenance.Count);
        if (count > PlanLimits.AllRecurrences)
            context.Fault("", FaultCode.TooMuchWork, $"All calendars and saws together may have at most {PlanLimits.AllRecurrences} recurrences, but have {count}.");
    }
}
