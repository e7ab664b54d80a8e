using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>Remnants from a length up that are worth another fraction than shorter ones.</summary>
public sealed record RemnantClassJson
{
    /// <summary>Shortest length of the class, in the length unit of the request.</summary>
    [LengthRange]
    public required decimal From { get; init; }

    /// <summary>Value of a remnant of the class as a fraction of its length's share of the bar's cost.</summary>
    [Range(0, 1)]
    public required decimal ValueFraction { get; init; }
}
