using SawEngine.Api.Features.Plans;
using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.Quantities;

namespace SawEngine.Api.Features.Shop;

/// <summary>Defaults from trade to wire.</summary>
public static class DefaultMapping
{
    /// <summary>What fills the gaps of saws, by saw and member.</summary>
    public static IReadOnlyList<DefaultJson> ToDefaults(this IEnumerable<SawMapping> saws, LengthScale scale) =>
    [
        .. saws.SelectMany(saw => saw.Defaults.OrderBy(value => value.Name, StringComparer.Ordinal).Select(value => ToJson(saw.Saw.SawId, value, scale))),
    ];

    private static DefaultJson ToJson(string sawId, DefaultValue value, LengthScale scale)
    {
        var isLength = value.Unit == "mm";
        return new()
        {
            SawId = sawId,
            Name = value.Name,
            Value = isLength ? scale.WriteRounded(Length.FromMillimeters(value.Value)) : value.Value,
            Unit = isLength ? WireEnum.Text(scale.Unit) : value.Unit.Length == 0 ? null : value.Unit,
            Source = value.Source,
            Confidence = WireEnum.Text(value.Confidence),
        };
    }
}
