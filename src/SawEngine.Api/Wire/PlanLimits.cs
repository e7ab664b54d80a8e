namespace SawEngine.Api.Wire;

/// <summary>Limits of a plan beside those of every operation (<see cref="Limits"/>).</summary>
public static class PlanLimits
{
    /// <summary>Most sales orders.</summary>
    public const int Orders = 2_000;

    /// <summary>Most order lines, of one order and of all together.</summary>
    public const int Lines = 5_000;

    /// <summary>Most stock items.</summary>
    public const int StockItems = 10_000;

    /// <summary>Most sections of the request's own.</summary>
    public const int Sections = 500;

    /// <summary>Most grades of the request's own.</summary>
    public const int Grades = 500;

    /// <summary>Most saws.</summary>
    public const int Saws = 50;

    /// <summary>Most blades.</summary>
    public const int Blades = 200;

    /// <summary>Most calendars.</summary>
    public const int Calendars = 50;

    /// <summary>Most shifts of a calendar.</summary>
    public const int Shifts = 28;

    /// <summary>Most breaks of a shift.</summary>
    public const int Breaks = 8;

    /// <summary>Most holidays of a calendar.</summary>
    public const int Holidays = 1_000;

    /// <summary>Most closures of a calendar.</summary>
    public const int Closures = 200;

    /// <summary>Most recurrence rules of one list.</summary>
    public const int Recurrences = 20;

    /// <summary>Most recurrence rules of a shop.</summary>
    public const int AllRecurrences = 100;

    /// <summary>Most lines of one recurrence.</summary>
    public const int RecurrenceLines = 20;

    /// <summary>Longest time that recurs, in minutes: a week.</summary>
    public const int RecurrenceMinutes = 10_080;

    /// <summary>Most days before the start of a plan from which a recurrence counts: three years.</summary>
    public const int RecurrenceDaysBefore = 1_096;

    /// <summary>Largest extra price of an hour of overtime.</summary>
    public const int OvertimeCostPerHour = 100_000;

    /// <summary>Most operators.</summary>
    public const int Operators = 200;

    /// <summary>Most cranes.</summary>
    public const int Cranes = 50;

    /// <summary>Most used blades that lie ready for a saw.</summary>
    public const int ShelfBlades = 200;

    /// <summary>Most set-up changes of a saw with a time of their own.</summary>
    public const int SetUpChanges = 500;

    /// <summary>Most downtimes of a saw.</summary>
    public const int Downtimes = 1_000;

    /// <summary>Most days until bought stock is there.</summary>
    public const int LeadDays = 400;

    /// <summary>Largest cost of an hour late.</summary>
    public const int CostPerHourLate = 10_000;

    /// <summary>Days before and after the start of the plan within which dates of orders lie.</summary>
    public const int DaysAroundStart = 3_650;
}
