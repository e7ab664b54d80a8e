using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.Saws;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary><c>GET /v1/blades</c>.</summary>
public sealed class Blades : ReferenceResource
{
    public override string Path => "/v1/blades";

    public override string Tag => "Blades";

    public override string ItemName => "Blade";

    public override string Description =>
        "The usual blades that a saw is taken to have where it lists none: one band by its largest capacity, in ten pitches. Lengths are in mm, or in inches with "
        + "`lengthUnit=in`, then to 6 decimals.";

    public override string Example => "34x1.1-4/6";

    public override Type ListType => typeof(BladeListResponse);

    public override Type ItemType => typeof(BladeResponse);

    public override string UnknownCode => FaultCode.UnknownBlade;

    protected override ReferenceParameter Filter => new("toothMaterial", "Blades with teeth of this material.", WireEnum.Texts(typeof(ToothMaterial)), IsFilter: true);

    protected override bool HasLengths => true;

    public override ReferenceAnswer? List(ReferenceQuery query)
    {
        var found = query.Designation is null ? null : Find(query.Designation);
        if (query.Designation is not null && found is null)
            return null;
        var items = DefaultBlades.Items.Where(blade => (found is null || blade == found) && (query.Filter is null || WireEnum.Text(blade.Blade.ToothMaterial) == query.Filter));
        return new($"list {query.Unit} {query.Filter} {found?.Blade.BladeId}", () => new BladeListResponse
        {
            LengthUnit = WireEnum.Text(query.Unit),
            Items = [.. items.Select(blade => BladeItemJson.Of(blade, new(query.Unit)))],
        });
    }

    public override ReferenceAnswer? Item(string designation, LengthUnit unit) => Find(designation) is { } found
        ? new($"item {unit} {found.Blade.BladeId}", () => new BladeResponse { LengthUnit = WireEnum.Text(unit), Item = BladeItemJson.Of(found, new(unit)) })
        : null;

    public override IReadOnlyList<string> Nearest(string designation) =>
        NearestNames.Of(designation, DefaultBlades.Items.Select(item => item.Blade.BladeId), Suggestions);

    private static CatalogBlade? Find(string designation) =>
        DefaultBlades.Items.FirstOrDefault(item => string.Equals(item.Blade.BladeId, designation, StringComparison.OrdinalIgnoreCase));
}
