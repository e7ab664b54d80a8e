using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core.Costs;

namespace SawEngine.Api.Features.Plans;

/// <summary>Cost of the planned pieces of an order line; the parts add up to the total.</summary>
public sealed record LineCostJson
{
    /// <summary>Stock used, less what goes back to the rack and what scrap brings; absent where stock has no costs.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public decimal? Material { get; init; }

    /// <summary>Hours of saws.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public required decimal Machine { get; init; }

    /// <summary>Hours of operators.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public required decimal Labor { get; init; }

    /// <summary>Wear of blades.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public required decimal Blade { get; init; }

    /// <summary>Pulling and fetching bars, and putting back what is left.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public required decimal Handling { get; init; }

    /// <summary>Sum of the parts.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public required decimal Total { get; init; }

    /// <summary>A cost by kind.</summary>
    public static LineCostJson Of(LineCost cost, bool stockIsCosted) => new()
    {
        Material = stockIsCosted ? cost.Material.Amount : null,
        Machine = cost.Machine.Amount,
        Labor = cost.Labor.Amount,
        Blade = cost.Blade.Amount,
        Handling = cost.Handling.Amount,
        Total = cost.Total.Amount,
    };
}
