using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>When a remainder is worth keeping, and what it is then worth.</summary>
public sealed record RemnantRulesJson
{
    /// <summary>Shortest remainder that goes back to the rack as a remnant, in the length unit of the request.</summary>
    [LengthRange]
    public required decimal KeepFrom { get; init; }

    /// <summary>Value of a remnant as a fraction of its length's share of the bar's cost.</summary>
    [Range(0, 1)]
    public required decimal ValueFraction { get; init; }
}
