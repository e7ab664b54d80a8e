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
        Attributes = Wire.Limits.Attributes,
        Lines = Wire.Limits.Lines,
        StockItems = Wire.Limits.StockItems,
        PlanOrders = Wire.PlanLimits.Orders,
        PlanLines = Wire.PlanLimits.Lines,
        PlanStockItems = Wire.PlanLimits.StockItems,
        PlanSaws = Wire.PlanLimits.Saws,
        PlanBlades = Wire.PlanLimits.Blades,
        PlanCalendars = Wire.PlanLimits.Calendars,
        Cuts = Wire.CuttingDataLimits.Cuts,
        CutsOnSaws = Wire.CuttingDataLimits.CutsOnSaws,
        TotalQuantity = Wire.Limits.TotalQuantity,
        StockQuantity = Wire.Limits.StockQuantity,
        Length = Wire.Limits.Length,
        Seconds = Wire.Limits.Seconds,
        Calculations = Wire.Limits.Calculations,
        WaitingCalculations = Wire.Limits.WaitingCalculations,
        FaultsReported = Wire.Limits.FaultsReported,
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

    /// <summary>Most cuts of a request for cutting data.</summary>
    [Range(1, 100_000_000)]
    public required int Cuts { get; init; }

    /// <summary>Most cuts of a request for cutting data, each times the saws that it is compared on. A corner of an outline counts a fifth.</summary>
    [Range(1, 100_000_000)]
    public required int CutsOnSaws { get; init; }

    /// <summary>Most pieces in a request, all quantities together.</summary>
    [Range(1, 100_000_000)]
    public required int TotalQuantity { get; init; }

    /// <summary>Most bars of one stock item.</summary>
    [Range(1, 100_000_000)]
    public required int StockQuantity { get; init; }

    /// <summary>Longest length, in either length unit.</summary>
    [Range(1, 100_000_000)]
    public required int Length { get; init; }

    /// <summary>Longest time of a calculation, in seconds.</summary>
    [Range(1, 100_000_000)]
    public required int Seconds { get; init; }

    /// <summary>Calculations at the same time.</summary>
    [Range(1, 100_000_000)]
    public required int Calculations { get; init; }

    /// <summary>Calculations that may wait; beyond them the service answers 503 with Retry-After.</summary>
    [Range(1, 100_000_000)]
    public required int WaitingCalculations { get; init; }

    /// <summary>Most faults listed in one refusal.</summary>
    [Range(1, 100_000_000)]
    public required int FaultsReported { get; init; }
}
