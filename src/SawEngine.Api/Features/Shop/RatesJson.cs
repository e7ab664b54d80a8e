using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>Rates of the shop that are not a saw's own, in the request's currency.</summary>
public sealed record RatesJson
{
    /// <summary>Cost of an operator's hour.</summary>
    [CostRange(100_000)]
    public decimal LaborCostPerHour { get; init; }

    /// <summary>Cost of fetching a bar and putting back what is left.</summary>
    [CostRange(100_000)]
    public decimal HandlingCostPerBar { get; init; }

    /// <summary>What a kilogram of scrap brings. A remainder is credited with no more than its length's share of the bar's cost.</summary>
    [CostRange(100_000)]
    public decimal ScrapValuePerKg { get; init; }
}
