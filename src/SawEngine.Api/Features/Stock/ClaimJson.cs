using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Stock;

/// <summary>Stock that the answer counts on, to be reserved at once.</summary>
public sealed record ClaimJson
{
    /// <summary>Stock item.</summary>
    public required string StockId { get; init; }

    /// <summary>Number of bars.</summary>
    [Range(1, Limits.StockQuantity)]
    public required int Quantity { get; init; }

    /// <summary>The nominal length as stated; nothing was planned on it.</summary>
    [LengthRange]
    public decimal? NominalLength { get; init; }

    /// <summary>The caller's version of the stock record.</summary>
    public string? Version { get; init; }

    /// <summary>The caller's marks, unchanged.</summary>
    public IReadOnlyDictionary<string, string>? Attributes { get; init; }
}
