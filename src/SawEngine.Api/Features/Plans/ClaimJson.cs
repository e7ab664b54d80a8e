namespace SawEngine.Api.Features.Plans;

/// <summary>Stock that the answer counts on.</summary>
public sealed record ClaimJson
{
    /// <summary>Stock item.</summary>
    public required string StockId { get; init; }

    /// <summary>Bars.</summary>
    public required int Quantity { get; init; }

    /// <summary>The caller's version of the stock record.</summary>
    public string? Version { get; init; }
}
