using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Orders;

/// <summary>By how much a piece may be longer or shorter than its length. It is cut to the middle: length + (plus - minus) / 2.</summary>
public sealed record ToleranceJson
{
    /// <summary>How much longer, in the length unit of the request.</summary>
    [LengthRange]
    public decimal Plus { get; init; }

    /// <summary>How much shorter, in the length unit of the request; less than the length.</summary>
    [LengthRange]
    public decimal Minus { get; init; }
}
