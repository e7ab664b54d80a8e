using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.Stock;

/// <summary>Equal bars, one remnant, or bars that can be bought.</summary>
public sealed record StockItemJson : IStatedLength
{
    /// <summary>Id of the stock item, unique.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string StockId { get; init; }

    /// <summary>Bars on hand, a remnant, or purchasable bars.</summary>
    public required StockKind Kind { get; init; }

    /// <summary>Id of one of the request's own sections, or a designation of the catalog.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public required string Section { get; init; }

    /// <summary>Id of one of the request's own grades, or a designation of the catalog.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public required string Grade { get; init; }

    /// <summary>Length that is surely there in the length unit of the request: measured, or the guaranteed minimum; exactly one of length and lengthText is stated.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public decimal? Length { get; init; }

    /// <summary>The same in feet and inches, whatever the length unit of the request is, such as 12'-6 3/8", 12', 150 3/8" or 6.375"; ft and in may stand for the marks.</summary>
    [MaxLength(Limits.LengthTextLength)]
    public string? LengthText { get; init; }

    /// <summary>What its length is nominally, in the length unit of the request, where that is more; nothing is planned on it, it is echoed with a warning.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public decimal? NominalLength { get; init; }

    /// <summary>Number of bars: required for bars, absent or 1 for a remnant, absent for as many purchasable bars as are needed.</summary>
    [Range(0, Limits.StockQuantity)]
    public int? Quantity { get; init; }

    /// <summary>Condition of both ends.</summary>
    public EndCondition EndCondition { get; init; } = EndCondition.Sawn;

    /// <summary>What it is coated with; jobs that cut it carry a caution.</summary>
    public Coating Coating { get; init; } = Coating.None;

    /// <summary>Cost of one bar in the request's currency, at most 6 decimals: on all stock or on none; on none, length is the cost.</summary>
    [CostRange]
    public decimal? Cost { get; init; }

    /// <summary>Cost of pulling one bar from its place, in the unit of the stock's cost; nothing where absent.</summary>
    [CostRange(100_000)]
    public decimal PullCost { get; init; }

    /// <summary>The melt it comes from; unknown where absent.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? Heat { get; init; }

    /// <summary>Inspection document that comes with it; none where absent.</summary>
    public CertificateJson? Certificate { get; init; }

    /// <summary>The customer who owns it: it serves that customer's lines only. The shop's own where absent.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? Owner { get; init; }

    /// <summary>The plant where it lies: it serves lines of that plant and lines that name none. It serves all where absent.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? Plant { get; init; }

    /// <summary>Cost of bringing one bar to another plant, in the unit of the stock's cost; it does not leave its plant where absent.</summary>
    [CostRange(100_000)]
    public decimal? ForeignPlantCost { get; init; }

    /// <summary>Ids of the orders that it is reserved for: it serves nothing else. It is free where absent.</summary>
    [MinLength(1), MaxLength(Limits.ReservedFor)]
    public IReadOnlyList<string>? ReservedFor { get; init; }

    /// <summary>Zones that give no pieces, ascending, of a single bar: it is used up to the first of them, or behind the last.</summary>
    [MaxLength(Limits.Zones)]
    public IReadOnlyList<BarZoneJson> Zones { get; init; } = [];

    /// <summary>Rack place.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? Location { get; init; }

    /// <summary>The caller's version of the stock record; it comes back in the claims.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? Version { get; init; }

    /// <summary>Days until bought bars are there; for purchasable stock only, 0 where absent.</summary>
    [Range(0, PlanLimits.LeadDays)]
    public int? LeadDays { get; init; }

    /// <summary>Free marks of the caller, which come back unchanged.</summary>
    [MaxLength(Limits.Attributes)]
    public IReadOnlyDictionary<string, string>? Attributes { get; init; }
}
