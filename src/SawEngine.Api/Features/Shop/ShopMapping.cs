using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Planning;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Stock;

namespace SawEngine.Api.Features.Shop;

/// <summary>A shop from wire to trade; the rules have passed.</summary>
public static class ShopMapping
{
    /// <summary>The saws with what fills their gaps, by id, ordinal.</summary>
    public static IReadOnlyList<SawMapping> ToSaws(this ShopJson shop, LengthScale scale)
    {
        var blades = shop.Blades.ToDictionary(blade => blade.BladeId, blade => ToBlade(blade, scale), StringComparer.Ordinal);
        return [.. shop.Saws.OrderBy(saw => saw.SawId, StringComparer.Ordinal).Select(saw => SawMapping.Of(saw, blades, scale))];
    }

    /// <summary>The capacity of a saw.</summary>
    public static SawCapacity ToCapacity(this SawCapacityJson capacity, LengthScale scale) =>
        new(scale.Read(capacity.Round), scale.Read(capacity.Width), scale.Read(capacity.Height));

    /// <summary>The cut bundles that are clamped; null where bars are cut singly.</summary>
    public static BundleCapacity? ToBundle(this BundleCapacityJson? bundle, LengthScale scale) => bundle is null ? null : new(bundle.MostWide, bundle.MostHigh)
    {
        LargestWidth = scale.Read(bundle.LargestWidth),
        LargestHeight = scale.Read(bundle.LargestHeight),
        HoldDown = bundle.HoldDown ?? bundle.MostHigh > 1,
    };

    /// <summary>The rates.</summary>
    public static ShopRates ToRates(this RatesJson rates) => new(new(rates.LaborCostPerHour), new(rates.HandlingCostPerBar), new(rates.ScrapValuePerKg));

    /// <summary>The trim by end condition.</summary>
    public static IReadOnlyDictionary<EndCondition, Length> ToTrim(this TrimJson trim, LengthScale scale) => new Dictionary<EndCondition, Length>
    {
        [EndCondition.Sheared] = scale.Read(trim.Sheared),
        [EndCondition.FlameCut] = scale.Read(trim.FlameCut),
        [EndCondition.Rolled] = scale.Read(trim.Rolled),
    };

    /// <summary>The remnant rule; null where nothing is kept.</summary>
    public static RemnantRules? ToRules(this RemnantRulesJson? remnants, LengthScale scale, bool isMoney) => remnants is null ? null : new(scale.Read(remnants.KeepFrom), remnants.ValueFraction)
    {
        Classes = [.. remnants.Classes.Select(one => new RemnantClass(scale.Read(one.From), one.ValueFraction))],
        HandlingCostMicros = scale.ReadMicros(remnants.HandlingCost, isMoney),
        MostNew = remnants.MostNew,
    };

    private static Blade ToBlade(BladeJson blade, LengthScale scale) => new()
    {
        BladeId = blade.BladeId,
        Width = scale.Read(blade.Width),
        Thickness = scale.Read(blade.Thickness),
        Kerf = scale.Read(blade.Kerf),
        CoarsestTeethPerInch = blade.TeethPerInch[0],
        FinestTeethPerInch = blade.TeethPerInch[^1],
        ToothMaterial = blade.ToothMaterial,
        Cost = new(blade.Cost),
        LifeAreaSquareMeters = blade.LifeAreaM2,
        RemainingLife = blade.RemainingLife,
    };
}
