namespace SawEngine.Api.Features.Plans;

/// <summary>Cost of the planned pieces of an order line; the parts add up to the total.</summary>
public sealed record LineCostJson
{
    /// <summary>Stock used, less what goes back to the rack and what scrap brings; absent where stock has no costs.</summary>
    public decimal? Material { get; init; }

    /// <summary>Hours of saws.</summary>
    public required decimal Machine { get; init; }

    /// <summary>Hours of operators.</summary>
    public required decimal Labor { get; init; }

    /// <summary>Wear of blades.</summary>
    public required decimal Blade { get; init; }

    /// <summary>Fetching bars and putting back what is left.</summary>
    public required decimal Handling { get; init; }

    /// <summary>Sum of the parts.</summary>
    public required decimal Total { get; init; }
}
