using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>Finds what a priced answer leaves out because nobody said what it costs.</summary>
internal static class UnstatedCosts
{
    /// <summary>One warning that names the costs of machine, labor and blades that are zero or not stated; none where stock has no cost either.</summary>
    public static IEnumerable<WarningJson> Warnings(this ShopJson shop, bool stockIsCosted)
    {
        string[] missing = stockIsCosted ? [.. Missing(shop)] : [];
        if (missing.Length > 0)
        {
            yield return new()
            {
                Code = WarningCode.CostNotStated,
                Pointer = "#/shop",
                Detail = $"Stock has costs, but the following are zero or not stated and count as nothing, so costs are too low: {string.Join("; ", missing)}.",
            };
        }
    }

    private static IEnumerable<string> Missing(ShopJson shop)
    {
        if (shop.Rates.LaborCostPerHour == 0)
            yield return "`rates.laborCostPerHour`";
        if (shop.Saws.Any(saw => saw.MachineCostPerHour == 0))
            yield return "`machineCostPerHour` of saws " + Ids(shop.Saws.Where(saw => saw.MachineCostPerHour == 0).Select(saw => saw.SawId));
        if (shop.Blades.Any(blade => blade.Cost == 0))
            yield return "`cost` of blades " + Ids(shop.Blades.Where(blade => blade.Cost == 0).Select(blade => blade.BladeId));
        if (shop.Blades.Count == 0)
            yield return "`blades`";
    }

    private static string Ids(IEnumerable<string> ids) => string.Join(", ", ids.Order(StringComparer.Ordinal).Select(Quoted.Text));
}
