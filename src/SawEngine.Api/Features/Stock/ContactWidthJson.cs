using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Stock;

/// <summary>How much material the blade is in at a depth of a custom section; between two depths in a straight line, two at one depth for a step.</summary>
public sealed record ContactWidthJson
{
    /// <summary>Depth below the top, in the length unit of the request; the first is 0, the last the height of the section.</summary>
    [LengthRange]
    public required decimal Depth { get; init; }

    /// <summary>All material that the blade is in there, in the length unit of the request.</summary>
    [LengthRange]
    public required decimal Width { get; init; }

    /// <summary>How many equal runs that is, from this depth down to the next: 2 for the two walls of a tube.</summary>
    [Range(1, 100)]
    public int Runs { get; init; } = 1;
}
