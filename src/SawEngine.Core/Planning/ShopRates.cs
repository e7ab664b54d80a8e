using SawEngine.Core.Quantities;

namespace SawEngine.Core.Planning;

/// <summary>Rates of the shop that are not a saw's own.</summary>
/// <param name="LaborCostPerHour">Cost of an operator's hour.</param>
/// <param name="HandlingCostPerBar">Cost of fetching a bar and putting back what is left.</param>
/// <param name="ScrapValuePerKilogram">What a kilogram of scrap brings.</param>
public sealed record ShopRates(Money LaborCostPerHour, Money HandlingCostPerBar, Money ScrapValuePerKilogram);
