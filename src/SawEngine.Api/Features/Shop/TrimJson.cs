using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>What is cut off each raw end before it may become a piece's face, its own kerf included, by end condition. Sawn ends need none.</summary>
public sealed record TrimJson
{
    /// <summary>Of a sheared end, in the length unit of the request.</summary>
    [LengthRange]
    public decimal Sheared { get; init; }

    /// <summary>Of a flame cut end, in the length unit of the request.</summary>
    [LengthRange]
    public decimal FlameCut { get; init; }

    /// <summary>Of an end as rolled, in the length unit of the request.</summary>
    [LengthRange]
    public decimal Rolled { get; init; }
}
