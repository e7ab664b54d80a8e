using SawEngine.Core.Grades;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Sections;

namespace SawEngine.Core.Stock;

/// <summary>Equal bars, or one remnant.</summary>
public sealed record StockItem
{
    /// <summary>The caller's id.</summary>
    public required string StockId { get; init; }

    /// <summary>On hand, kept from earlier work, or to be bought.</summary>
    public required StockKind Kind { get; init; }

    /// <summary>Section; null where all pieces and stock are of one unnamed section.</summary>
    public Section? Section { get; init; }

    /// <summary>Grade; null where all pieces and stock are of one unnamed grade.</summary>
    public Grade? Grade { get; init; }

    /// <summary>The length that is surely there: measured, or the guaranteed minimum.</summary>
    public required Length Length { get; init; }

    /// <summary>Number of bars; null for as many as are needed (purchasable stock only).</summary>
    public int? Quantity { get; init; } = 1;

    /// <summary>Condition of both ends.</summary>
    public EndCondition EndCondition { get; init; }

    /// <summary>What it is coated with.</summary>
    public Coating Coating { get; init; }

    /// <summary>
    /// Cost of one bar in millionths of the objective's unit: money where the request states costs, else millimeters (then one unit is one nanometer).
    /// </summary>
    public required long CostMicros { get; init; }

    /// <summary>Cost of pulling one bar from its place, in millionths of the objective's unit.</summary>
    public long PullCostMicros { get; init; }

    /// <summary>The melt it comes from; null where it is lost or unknown.</summary>
    public string? Heat { get; init; }

    /// <summary>Inspection document that comes with it.</summary>
    public Certificate Certificate { get; init; }

    /// <summary>The customer who owns it; null where it is the shop's own.</summary>
    public string? Owner { get; init; }

    /// <summary>The plant where it lies; null where that does not matter.</summary>
    public string? Plant { get; init; }

    /// <summary>Cost of bringing one bar to another plant, in millionths of the objective's unit; null where it serves its own plant only.</summary>
    public long? ForeignPlantCostMicros { get; init; }

    /// <summary>The orders, or pieces where they come without orders, that it is reserved for; null where it is free.</summary>
    public ValueList<string>? ReservedFor { get; init; }

    /// <summary>Zones that give no pieces, ascending and disjoint; none where all of the bar is good.</summary>
    public ValueList<BarZone> Zones { get; init; } = [];

    /// <summary>Whether some of the bar is kept for another use, so that its remainder is always put back.</summary>
    public bool HasReservedZone => Zones.Any(zone => zone.Kind == ZoneKind.Reserved);

    /// <summary>Rack place.</summary>
    public string? Location { get; init; }

    /// <summary>Days until bought stock is there; 0 for stock on hand.</summary>
    public int LeadDays { get; init; }
}
