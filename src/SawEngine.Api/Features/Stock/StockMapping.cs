using SawEngine.Api.Features.Orders;
using SawEngine.Api.Wire;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.Stock;

/// <summary>Stock from wire to trade; the rules have passed.</summary>
public static class StockMapping
{
    private const decimal MicrosPerUnit = 1_000_000m;

    /// <summary>Whether costs are stated; the rules see to it that they are on all of the stock or on none.</summary>
    public static bool IsCosted(this IReadOnlyList<StockItemJson> stock) => stock.Any(item => item.Cost is not null);

    /// <summary>The grades that stock names, with the places where it does.</summary>
    public static IEnumerable<(string? Name, string Pointer)> GradeUses(this IReadOnlyList<StockItemJson> stock) =>
        stock.Select((item, i) => ((string?)item.Grade, $"#/stock/{i}/grade"));

    /// <summary>The stock by id, ordinal, without items of which there is nothing. Where no costs are stated a bar costs its length, a nanometer being a millionth of a millimeter.</summary>
    public static IReadOnlyList<StockItem> ToStockItems(this IReadOnlyList<StockItemJson> stock, LengthScale scale, Materials materials) =>
        [.. stock.Where(item => item.Quantity != 0).OrderBy(item => item.StockId, StringComparer.Ordinal).Select(item => ToStockItem(item, scale, materials, stock.IsCosted()))];

    private static StockItem ToStockItem(StockItemJson item, LengthScale scale, Materials materials, bool isMoney)
    {
        var length = scale.Read(item);
        return new()
        {
            StockId = item.StockId,
            Kind = item.Kind,
            Section = materials.Section(item.Section),
            Grade = materials.Grade(item.Grade),
            Length = length,
            Quantity = item.Kind == StockKind.Remnant ? 1 : item.Quantity,
            EndCondition = item.EndCondition,
            Coating = item.Coating,
            CostMicros = item.Cost is { } cost ? (long)(cost * MicrosPerUnit) : length.Nanometers,
            PullCostMicros = scale.ReadMicros(item.PullCost, isMoney),
            Heat = item.Heat,
            Certificate = item.Certificate.ToCertificate(),
            Owner = item.Owner,
            Plant = item.Plant,
            ForeignPlantCostMicros = item.ForeignPlantCost is { } bringing ? scale.ReadMicros(bringing, isMoney) : null,
            ReservedFor = item.ReservedFor is { } ids ? [.. ids.Order(StringComparer.Ordinal)] : null,
            Zones = [.. item.Zones.Select(zone => new BarZone(scale.Read(zone.From), scale.Read(zone.To), zone.Kind))],
            Location = item.Location,
            LeadDays = item.LeadDays ?? 0,
        };
    }
}
