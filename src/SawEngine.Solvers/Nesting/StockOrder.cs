using SawEngine.Core.Stock;

namespace SawEngine.Solvers.Nesting;

/// <summary>Orders in which stock is opened. Ties go by stock id.</summary>
internal static class StockOrder
{
    /// <summary>Remnants before bars, each from the shortest up.</summary>
    public static List<int> ShortestRemnantFirst(NestModel model) =>
        [.. CanBeUsed(model).OrderBy(stock => !IsRemnant(model, stock)).ThenBy(stock => model.Stock[stock].Usable)];

    /// <summary>From the least cost per usable length up, long ones before short ones of equal cost.</summary>
    public static List<int> CheapestFirst(NestModel model) =>
        [.. CanBeUsed(model).OrderBy(stock => CostPerLength(model.Stock[stock])).ThenByDescending(stock => model.Stock[stock].Usable)];

    /// <summary>Remnants from the shortest up, then bars by cost per usable length.</summary>
    public static List<int> ShortestRemnantThenCheapest(NestModel model) =>
        [.. CheapestFirst(model).OrderBy(stock => IsRemnant(model, stock) ? model.Stock[stock].Usable : long.MaxValue)];

    /// <summary>Bars before remnants, each by cost per usable length: remnants come in all lengths and suit the last pieces.</summary>
    public static List<int> RemnantsLast(NestModel model) => [.. CheapestFirst(model).OrderBy(stock => IsRemnant(model, stock))];

    /// <summary>Cost per usable length of the cheapest bars, or of the cheapest remnant where there are no others.</summary>
    public static decimal LeastMillCostPerLength(NestModel model)
    {
        var bars = CanBeUsed(model).Where(stock => !IsRemnant(model, stock)).DefaultIfEmpty(CheapestFirst(model).FirstOrDefault(-1)).ToList();
        return bars[0] < 0 ? 0m : bars.Min(stock => CostPerLength(model.Stock[stock]));
    }

    private static IEnumerable<int> CanBeUsed(NestModel model) => Enumerable.Range(0, model.Stock.Length).Where(stock => model.Stock[stock].Usable > 0);

    private static bool IsRemnant(NestModel model, int stock) => model.Stock[stock].Item.Kind == StockKind.Remnant;

    private static decimal CostPerLength(BarStock stock) => (decimal)stock.Item.CostMicros / stock.Usable;
}
