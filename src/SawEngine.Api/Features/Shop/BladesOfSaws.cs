using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>Which blades may be mounted on which saw of a shop, as far as its rules let one say.</summary>
internal sealed class BladesOfSaws(ShopJson shop, LengthScale scale)
{
    private readonly Dictionary<string, Lazy<IReadOnlyList<string>>> _blades = shop.Saws.DistinctBy(saw => saw.SawId)
        .ToDictionary(saw => saw.SawId, saw => new Lazy<IReadOnlyList<string>>(() => BladesOf(saw, scale)), StringComparer.Ordinal);

    // Only as many suggestions as can be reported: each compares with a whole list.
    private int _suggestionsLeft = Limits.FaultsReported;

    public bool KnowsSaw(string sawId) => _blades.ContainsKey(sawId);

    public bool Knows(string sawId, string bladeId) => _blades[sawId].Value.Contains(bladeId, StringComparer.Ordinal);

    /// <summary>The question whether another saw was meant; empty where none is near.</summary>
    public string NearestSaw(string sawId) => Nearest(sawId, _blades.Keys.Order(StringComparer.Ordinal));

    /// <summary>The question whether another blade was meant; empty where none is near.</summary>
    public string NearestBlade(string sawId, string bladeId) => Nearest(bladeId, _blades[sawId].Value);

    /// <summary>The blades of a saw: those that it lists, else the usual ones.</summary>
    private static IReadOnlyList<string> BladesOf(SawJson saw, LengthScale scale) =>
        saw.BladeIds ?? (scale.CanRead(saw.Capacity.Round) && scale.CanRead(saw.Capacity.Width) && scale.CanRead(saw.Capacity.Height)
            ? [.. SawMapping.DefaultBladesOf(new(scale.Read(saw.Capacity.Round), scale.Read(saw.Capacity.Width), scale.Read(saw.Capacity.Height))).Select(blade => blade.BladeId)]
            : []);

    private string Nearest(string id, IEnumerable<string> known) => _suggestionsLeft-- > 0 ? NearestName.Question(id, known) : "";
}
