using System.ComponentModel.DataAnnotations;

namespace SawEngine.Api.Features.Service;

/// <summary>Limits in force; a request beyond them is refused with the code that names the limit.</summary>
public sealed record LimitsJson
{
    /// <summary>The limits.</summary>
    public static readonly LimitsJson InForce = new()
    {
        BodyBytes = Wire.Limits.BodyBytes,
        UnpackedBodyBytes = Wire.Limits.BodyBytes,
        Depth = Wire.Limits.Depth,
        TextLength = Wire.Limits.TextLength,
        IdLength = Wire.Limits.IdLength,
        LengthTextLength = Wire.Limits.LengthTextLength,
        Attributes = Wire.Limits.Attributes,
        Lines = Wire.Limits.Lines,
        StockItems = Wire.Limits.StockItems,
        PlanOrders = Wire.PlanLimits.Orders,
        PlanLines = Wire.PlanLimits.Lines,
        PlanStockItems = Wire.PlanLimits.StockItems,
        PlanSaws = Wire.PlanLimits.Saws,
        PlanBlades = Wire.PlanLimits.Blades,
        PlanCalendars = Wire.PlanLimits.Calendars,
        PlanSections = Wire.PlanLimits.Sections,
        PlanGrades = Wire.PlanLimits.Grades,
        PlanShifts = Wire.PlanLimits.Shifts,
        PlanBreaks = Wire.PlanLimits.Breaks,
        PlanHolidays = Wire.PlanLimits.Holidays,
        PlanClosures = Wire.PlanLimits.Closures,
        PlanRecurrences = Wire.PlanLimits.Recurrences,
        PlanAllRecurrences = Wire.PlanLimits.AllRecurrences,
        PlanRecurrenceLines = Wire.PlanLimits.RecurrenceLines,
        PlanRecurrenceMinutes = Wire.PlanLimits.RecurrenceMinutes,
        PlanRecurrenceDaysBefore = Wire.PlanLimits.RecurrenceDaysBefore,
        PlanOvertimeCostPerHour = Wire.PlanLimits.OvertimeCostPerHour,
        PlanOperators = Wire.PlanLimits.Operators,
        PlanCranes = Wire.PlanLimits.Cranes,
        PlanShelfBlades = Wire.PlanLimits.ShelfBlades,
        PlanSetUpChanges = Wire.PlanLimits.SetUpChanges,
        PlanDowntimes = Wire.PlanLimits.Downtimes,
        PlanLeadDays = Wire.PlanLimits.LeadDays,
        PlanCostPerHourLate = Wire.PlanLimits.CostPerHourLate,
        PlanDaysAroundStart = Wire.PlanLimits.DaysAroundStart,
        Cuts = Wire.CuttingDataLimits.Cuts,
        CutsOnSaws = Wire.CuttingDataLimits.CutsOnSaws,
        ScheduleJobs = Wire.ScheduleLimits.Jobs,
        ScheduleSecondsOfJob = Wire.ScheduleLimits.SecondsOfJob,
        ScheduleSteps = Wire.ScheduleLimits.Steps,
        ScheduleLoads = Wire.ScheduleLimits.Loads,
        SchedulePredecessors = Wire.ScheduleLimits.Predecessors,
        ScheduleParts = Wire.ScheduleLimits.Parts,
        ScheduleScheduledJobs = Wire.ScheduleLimits.ScheduledJobs,
        ScheduleSpans = Wire.ScheduleLimits.Spans,
        ScheduleWeight = Wire.ScheduleLimits.Weight,
        ScheduleAllSteps = Wire.ScheduleLimits.AllSteps,
        EstimateLines = Wire.EstimateLimits.Lines,
        EstimatePriceBreaks = Wire.EstimateLimits.PriceBreaks,
        EstimatePrices = Wire.EstimateLimits.Prices,
        TotalQuantity = Wire.Limits.TotalQuantity,
        StockQuantity = Wire.Limits.StockQuantity,
        RemnantClasses = Wire.Limits.RemnantClasses,
        Substitutes = Wire.Limits.Substitutes,
        ReservedFor = Wire.Limits.ReservedFor,
        Zones = Wire.Limits.Zones,
        BundleWide = Wire.Limits.BundleWide,
        BundleHigh = Wire.Limits.BundleHigh,
        Length = Wire.Limits.Length,
        Cost = Wire.Limits.Cost,
        Seconds = Wire.Limits.Seconds,
        WaitSeconds = Wire.Limits.WaitSeconds,
        RequestsInHand = Wire.Limits.RequestsInHand,
        ReceiveSeconds = Wire.Limits.ReceiveSeconds,
        HeaderSeconds = Wire.Limits.HeaderSeconds,
        BytesPerSecond = Wire.Limits.BytesPerSecond,
        RequestLineBytes = Wire.Limits.RequestLineBytes,
        HeaderBytes = Wire.Limits.HeaderBytes,
        Headers = Wire.Limits.Headers,
        Connections = Wire.Limits.Connections,
        Calculations = Wire.Limits.Calculations,
        WaitingCalculations = Wire.Limits.WaitingCalculations,
        FaultsReported = Wire.Limits.FaultsReported,
        ViolationsReported = Wire.Limits.ViolationsReported,
        FewerPieces = Wire.Limits.FewerPieces,
    };

    /// <summary>Largest body as sent, in bytes.</summary>
    [Range(1, 100_000_000)]
    public required int BodyBytes { get; init; }

    /// <summary>Largest body when unpacked, in bytes.</summary>
    [Range(1, 100_000_000)]
    public required int UnpackedBodyBytes { get; init; }

    /// <summary>Deepest nesting of objects and lists.</summary>
    [Range(1, 100_000_000)]
    public required int Depth { get; init; }

    /// <summary>Longest text in code points, where no shorter limit is documented.</summary>
    [Range(1, 100_000_000)]
    public required int TextLength { get; init; }

    /// <summary>Longest id in code points.</summary>
    [Range(1, 100_000_000)]
    public required int IdLength { get; init; }

    /// <summary>Longest text that states a length, in code points.</summary>
    [Range(1, 100_000_000)]
    public required int LengthTextLength { get; init; }

    /// <summary>Most entries of an attributes map.</summary>
    [Range(1, 100_000_000)]
    public required int Attributes { get; init; }

    /// <summary>Most pieces of a nest, as list entries.</summary>
    [Range(1, 100_000_000)]
    public required int Lines { get; init; }

    /// <summary>Most stock items of a nest.</summary>
    [Range(1, 100_000_000)]
    public required int StockItems { get; init; }

    /// <summary>Most orders of a plan.</summary>
    [Range(1, 100_000_000)]
    public required int PlanOrders { get; init; }

    /// <summary>Most order lines of a plan.</summary>
    [Range(1, 100_000_000)]
    public required int PlanLines { get; init; }

    /// <summary>Most stock items of a plan.</summary>
    [Range(1, 100_000_000)]
    public required int PlanStockItems { get; init; }

    /// <summary>Most saws of a plan.</summary>
    [Range(1, 100_000_000)]
    public required int PlanSaws { get; init; }

    /// <summary>Most blades of a plan.</summary>
    [Range(1, 100_000_000)]
    public required int PlanBlades { get; init; }

    /// <summary>Most calendars of a plan.</summary>
    [Range(1, 100_000_000)]
    public required int PlanCalendars { get; init; }

    /// <summary>Most sections of a plan's own.</summary>
    [Range(1, 100_000_000)]
    public required int PlanSections { get; init; }

    /// <summary>Most grades of a plan's own.</summary>
    [Range(1, 100_000_000)]
    public required int PlanGrades { get; init; }

    /// <summary>Most shifts of a calendar.</summary>
    [Range(1, 100_000_000)]
    public required int PlanShifts { get; init; }

    /// <summary>Most breaks of a shift.</summary>
    [Range(1, 100_000_000)]
    public required int PlanBreaks { get; init; }

    /// <summary>Most holidays of a calendar.</summary>
    [Range(1, 100_000_000)]
    public required int PlanHolidays { get; init; }

    /// <summary>Most closures of a calendar.</summary>
    [Range(1, 100_000_000)]
    public required int PlanClosures { get; init; }

    /// <summary>Most recurrence rules of one list.</summary>
    [Range(1, 100_000_000)]
    public required int PlanRecurrences { get; init; }

    /// <summary>Most recurrence rules of a shop.</summary>
    [Range(1, 100_000_000)]
    public required int PlanAllRecurrences { get; init; }

    /// <summary>Most lines of one recurrence.</summary>
    [Range(1, 100_000_000)]
    public required int PlanRecurrenceLines { get; init; }

    /// <summary>Longest time that recurs, in minutes: a week.</summary>
    [Range(1, 100_000_000)]
    public required int PlanRecurrenceMinutes { get; init; }

    /// <summary>Most days before the start of a plan from which a recurrence counts: three years.</summary>
    [Range(1, 100_000_000)]
    public required int PlanRecurrenceDaysBefore { get; init; }

    /// <summary>Largest extra price of an hour of overtime.</summary>
    [Range(1, 100_000_000)]
    public required int PlanOvertimeCostPerHour { get; init; }

    /// <summary>Most operators.</summary>
    [Range(1, 100_000_000)]
    public required int PlanOperators { get; init; }

    /// <summary>Most cranes.</summary>
    [Range(1, 100_000_000)]
    public required int PlanCranes { get; init; }

    /// <summary>Most used blades that lie ready for a saw.</summary>
    [Range(1, 100_000_000)]
    public required int PlanShelfBlades { get; init; }

    /// <summary>Most set-up changes of a saw with a time of their own.</summary>
    [Range(1, 100_000_000)]
    public required int PlanSetUpChanges { get; init; }

    /// <summary>Most downtimes of a saw.</summary>
    [Range(1, 100_000_000)]
    public required int PlanDowntimes { get; init; }

    /// <summary>Most days until bought stock is there.</summary>
    [Range(1, 100_000_000)]
    public required int PlanLeadDays { get; init; }

    /// <summary>Largest cost of an hour late.</summary>
    [Range(1, 100_000_000)]
    public required int PlanCostPerHourLate { get; init; }

    /// <summary>Days before and after the start of a plan within which dates of orders lie.</summary>
    [Range(1, 100_000_000)]
    public required int PlanDaysAroundStart { get; init; }

    /// <summary>Most cuts of a request for cutting data.</summary>
    [Range(1, 100_000_000)]
    public required int Cuts { get; init; }

    /// <summary>Most cuts of a request for cutting data, each times the saws that it is compared on. A corner of an outline or a contact width counts a fifth.</summary>
    [Range(1, 100_000_000)]
    public required int CutsOnSaws { get; init; }

    /// <summary>Most jobs of a schedule.</summary>
    [Range(1, 100_000_000)]
    public required int ScheduleJobs { get; init; }

    /// <summary>Longest working time of a job of a schedule, in seconds.</summary>
    [Range(1, 100_000_000)]
    public required int ScheduleSecondsOfJob { get; init; }

    /// <summary>Most steps of a job of a schedule.</summary>
    [Range(1, 100_000_000)]
    public required int ScheduleSteps { get; init; }

    /// <summary>Most loads of a job of a schedule.</summary>
    [Range(1, 100_000_000)]
    public required int ScheduleLoads { get; init; }

    /// <summary>Most jobs of a schedule that one job follows.</summary>
    [Range(1, 100_000_000)]
    public required int SchedulePredecessors { get; init; }

    /// <summary>Most parts of a job of a schedule.</summary>
    [Range(1, 100_000_000)]
    public required int ScheduleParts { get; init; }

    /// <summary>Most jobs and parts of jobs in an edited schedule.</summary>
    [Range(1, 100_000_000)]
    public required int ScheduleScheduledJobs { get; init; }

    /// <summary>Most set-ups and spans of work in an edited schedule.</summary>
    [Range(1, 100_000_000)]
    public required int ScheduleSpans { get; init; }

    /// <summary>Largest factor on a cause of a schedule's cost.</summary>
    [Range(1, 100_000_000)]
    public required int ScheduleWeight { get; init; }

    /// <summary>Most steps of a schedule, of all jobs on all their saws.</summary>
    [Range(1, 100_000_000)]
    public required int ScheduleAllSteps { get; init; }

    /// <summary>Most lines of an estimate.</summary>
    [Range(1, 100_000_000)]
    public required int EstimateLines { get; init; }

    /// <summary>Most quantities for which an estimate prices each line.</summary>
    [Range(1, 100_000_000)]
    public required int EstimatePriceBreaks { get; init; }

    /// <summary>Most prices of an estimate: lines times quantities.</summary>
    [Range(1, 100_000_000)]
    public required int EstimatePrices { get; init; }

    /// <summary>Most pieces in a request, all quantities together.</summary>
    [Range(1, 100_000_000)]
    public required int TotalQuantity { get; init; }

    /// <summary>Most bars of one stock item.</summary>
    [Range(1, 100_000_000)]
    public required int StockQuantity { get; init; }

    /// <summary>Most length classes of remnants.</summary>
    [Range(1, 100_000_000)]
    public required int RemnantClasses { get; init; }

    /// <summary>Most substitutes of an order line or piece.</summary>
    [Range(1, 100_000_000)]
    public required int Substitutes { get; init; }

    /// <summary>Most orders or pieces that one stock item is reserved for.</summary>
    [Range(1, 100_000_000)]
    public required int ReservedFor { get; init; }

    /// <summary>Most zones of a bar.</summary>
    [Range(1, 100_000_000)]
    public required int Zones { get; init; }

    /// <summary>Most bars side by side in a cut bundle.</summary>
    [Range(1, 100_000_000)]
    public required int BundleWide { get; init; }

    /// <summary>Most bars on top of one another in a cut bundle.</summary>
    [Range(1, 100_000_000)]
    public required int BundleHigh { get; init; }

    /// <summary>Longest length, in either length unit.</summary>
    [Range(1, 100_000_000)]
    public required int Length { get; init; }

    /// <summary>Largest cost.</summary>
    [Range(1, 100_000_000)]
    public required int Cost { get; init; }

    /// <summary>Longest time of a calculation, in seconds.</summary>
    [Range(1, 100_000_000)]
    public required int Seconds { get; init; }

    /// <summary>Longest time that a calculation waits for another to end, in seconds; after it the service answers 503.</summary>
    [Range(1, 100_000_000)]
    public required int WaitSeconds { get; init; }

    /// <summary>Requests for calculations that are received, waiting or calculated at once; beyond them the service answers 503 with Retry-After.</summary>
    [Range(1, 100_000_000)]
    public required int RequestsInHand { get; init; }

    /// <summary>Longest time in which a body must have come in, in seconds.</summary>
    [Range(1, 100_000_000)]
    public required int ReceiveSeconds { get; init; }

    /// <summary>Longest time in which the headers must have come in, in seconds.</summary>
    [Range(1, 100_000_000)]
    public required int HeaderSeconds { get; init; }

    /// <summary>Least rate at which a body must come in and an answer be taken, in bytes per second.</summary>
    [Range(1, 100_000_000)]
    public required int BytesPerSecond { get; init; }

    /// <summary>Longest request line, in bytes.</summary>
    [Range(1, 100_000_000)]
    public required int RequestLineBytes { get; init; }

    /// <summary>Largest headers of a request together, in bytes.</summary>
    [Range(1, 100_000_000)]
    public required int HeaderBytes { get; init; }

    /// <summary>Most headers of a request.</summary>
    [Range(1, 100_000_000)]
    public required int Headers { get; init; }

    /// <summary>Most connections at once; those beyond are closed without an answer.</summary>
    [Range(1, 100_000_000)]
    public required int Connections { get; init; }

    /// <summary>Calculations at the same time.</summary>
    [Range(1, 100_000_000)]
    public required int Calculations { get; init; }

    /// <summary>Calculations that may wait; beyond them the service answers 503 with Retry-After.</summary>
    [Range(1, 100_000_000)]
    public required int WaitingCalculations { get; init; }

    /// <summary>Most faults listed in one refusal.</summary>
    [Range(1, 100_000_000)]
    public required int FaultsReported { get; init; }

    /// <summary>Most broken rules listed in one evaluation of a nest or a schedule; all are counted.</summary>
    [Range(1, 100_000_000)]
    public required int ViolationsReported { get; init; }

    /// <summary>The most by which a quantity may be less in the search for near misses.</summary>
    [Range(1, 100_000_000)]
    public required int FewerPieces { get; init; }
}
