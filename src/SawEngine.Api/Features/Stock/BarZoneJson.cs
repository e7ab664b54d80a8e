using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.Stock;

/// <summary>A stretch of a bar that gives no pieces, measured from the bar's start.</summary>
public sealed record BarZoneJson
{
    /// <summary>Where it begins, in the length unit of the request.</summary>
    [LengthRange]
    public required decimal From { get; init; }

    /// <summary>Where it ends, in the length unit of the request.</summary>
    [LengthRange]
    public required decimal To { get; init; }

    /// <summary>Defective: no piece has any of it. Reserved: it stays whole, in the remainder, which goes back to the rack.</summary>
    public required ZoneKind Kind { get; init; }
}
