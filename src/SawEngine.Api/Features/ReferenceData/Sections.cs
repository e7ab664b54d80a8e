using SawEngine.Api.Wire;
using SawEngine.Core.Sections;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary><c>GET /v1/sections</c>.</summary>
public sealed class Sections : ReferenceResource
{
    private static SectionCatalog Catalog => SectionCatalog.Standard;

    public override string Path => "/v1/sections";

    public override string Tag => "Sections";

    public override string ItemName => "Section";

    public override string Description =>
        "A section is found by any of its designations; case and spaces make no difference, and a slash may stand as it is. Rounds, squares, hexagons and flats of "
        + "any size are found by a designation that says it, such as `Round 37` or `Flat 80x12`, but only those of the standards are listed. Lengths are in mm, or in "
        + "inches with `lengthUnit=in`, then to 6 decimals.";

    public override string Example => "HSS4X4X1/4";

    public override Type ListType => typeof(SectionListResponse);

    public override Type ItemType => typeof(SectionResponse);

    public override string UnknownCode => FaultCode.UnknownSection;

    protected override ReferenceParameter Filter => new("shape", "Sections of this shape.", WireEnum.Texts(typeof(SectionShape)), IsFilter: true);

    protected override bool HasLengths => true;

    public override ReferenceAnswer? List(ReferenceQuery query)
    {
        if (query.Designation is not { } designation)
            return new($"list {query.Unit} {query.Filter}", () => Of(Catalog.Items.Where(IsWanted)));
        return Catalog.FindItem(designation) is not { } found ? null
            : !IsWanted(found) ? new($"list of none {query.Unit}", () => Of([]))
            : new(KeyOf(found, $"list of {query.Unit}"), () => Of([found]));

        bool IsWanted(CatalogSection section) => query.Filter is null || WireEnum.Text(section.Section.Shape) == query.Filter;

        SectionListResponse Of(IEnumerable<CatalogSection> items) => new()
        {
            LengthUnit = WireEnum.Text(query.Unit),
            Items = [.. items.Select(section => SectionItemJson.Of(section, new(query.Unit)))],
        };
    }

    public override ReferenceAnswer? Item(string designation, LengthUnit unit) => Catalog.FindItem(designation) is { } found
        ? new(KeyOf(found, $"item {unit}"), () => new SectionResponse { LengthUnit = WireEnum.Text(unit), Item = SectionItemJson.Of(found, new(unit)) })
        : null;

    public override IReadOnlyList<string> Nearest(string designation) => Catalog.Nearest(designation, Suggestions);

    /// <summary>A size that is not listed is one of very many.</summary>
    private static string? KeyOf(CatalogSection section, string form) => section.Published is null ? null : $"{form} {section.Section.Designation}";
}
