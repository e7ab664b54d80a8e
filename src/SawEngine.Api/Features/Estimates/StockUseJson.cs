using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Estimates;

/// <summary>Stock that an estimate takes; nothing is reserved.</summary>
public sealed record StockUseJson
{
    /// <summary>Stock item.</summary>
    public required string StockId { get; init; }

    /// <summary>Number of bars.</summary>
    [Range(1, Limits.StockQuantity)]
    public required int Quantity { get; init; }
}
