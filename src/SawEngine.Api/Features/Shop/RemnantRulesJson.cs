using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>When a remainder is worth keeping, and what it is then worth.</summary>
public sealed record RemnantRulesJson
{
    /// <summary>Shortest remainder that goes back to the rack as a remnant, in the length unit of the request.</summary>
    [LengthRange]
    public required decimal KeepFrom { get; init; }

    /// <summary>Value of a remnant as a fraction of its length's share of the bar's cost, before handling; up to the first of the classes where there are any.</summary>
    [Range(0, 1)]
    public required decimal ValueFraction { get; init; }

    /// <summary>Longer remnants that are worth another fraction, ascending, the first from above keepFrom. A remnant is never worth less than a shorter one.</summary>
    [MaxLength(Limits.RemnantClasses)]
    public IReadOnlyList<RemnantClassJson> Classes { get; init; } = [];

    /// <summary>Cost of putting a remnant back and finding it again, in the unit of the stock's cost; a remnant is worth its fraction less this, but never less than scrap.</summary>
    [CostRange(100_000)]
    public decimal HandlingCost { get; init; }

    /// <summary>Most remnants that the layouts of one section and grade may leave; those beyond count as scrap, with a warning. No limit where absent.</summary>
    [Range(0, Limits.TotalQuantity)]
    public int? MostNew { get; init; }
}
