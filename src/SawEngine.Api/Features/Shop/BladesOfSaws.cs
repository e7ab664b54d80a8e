using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>Which blades may be mounted on which saw of a shop, as far as its rules let one say.</summary>
internal sealed class BladesOfSaws(ShopJson shop, LengthScale scale)
{
    private readonly Dictionary<string, Lazy<IReadOnlyList<string>>> _blades = shop.Saws.DistinctBy(saw => saw.SawId)
        .ToDictionary(saw => saw.SawId, saw => new Lazy<IReadOnlyList<string>>(() => BladesOf(saw, scale)), StringComparer.Ordinal);

    // The shop's own blades, and the usual ones of saws that list none.
    private readonly Lazy<HashSet<string>> _ofShop = new(() =>
        [.. shop.Blades.Select(blade => blade.BladeId), .. shop.Saws.Where(saw => saw.BladeIds is null).SelectMany(saw => BladesOf(saw, scale))]);

    // Only as many suggestions as can be reported: each compares with a whole list.
    private int _suggestionsLeft = Limits.FaultsReported;

    public bool KnowsSaw(string sawId) => _blades.ContainsKey(sawId);

    /// <summary>Whether a blade is of the shop or a usual one of its saws.</summary>
    public bool Knows(string bladeId) => _ofShop.Value.Contains(bladeId);

    /// <summary>Whether a blade may be mounted on a saw.</summary>
    public bool Knows(string sawId, string bladeId) => _blades[sawId].Value.Contains(bladeId, StringComparer.Ordinal);

    /// <summary>The question whether another saw was meant; empty where none is near.</summary>
    public string NearestSaw(string sawId) => Nearest(sawId, _blades.Keys.Order(StringComparer.Ordinal));

    /// <summary>The question whether another blade of the shop was meant; empty where none is near.</summary>
    public string NearestBlade(string bladeId) => Nearest(bladeId, _ofShop.Value.Order(StringComparer.Ordinal));

    /// <summary>The question whether another blade of the saw was meant; empty where none is near.</summary>
    public string NearestBlade(string sawId, string bladeId) => Nearest(bladeId, _blades[sawId].Value);

    /// <summary>The blades of a saw: those that it lists, else the usual ones.</summary>
    private static IReadOnlyList<string> BladesOf(SawJson saw, LengthScale scale) =>
        saw.BladeIds ?? (scale.CanRead(saw.Capacity.Round) && scale.CanRead(saw.Capacity.Width) && scale.CanRead(saw.Capacity.Height)
            ? [.. SawMapping.DefaultBladesOf(saw.Capacity.ToCapacity(scale)).Select(blade => blade.BladeId)]
            : []);

    private string Nearest(string id, IEnumerable<string> known) => _suggestionsLeft-- > 0 ? NearestName.Question(id, known) : "";
}
