using System.Collections.Frozen;
using System.Text.Json;

namespace SawEngine.Core.Sections;

/// <summary>Standard sections by designation. Read once, when first used; immutable and safe for use from many threads.</summary>
public sealed class SectionCatalog
{
    private static readonly Lazy<SectionCatalog> s_standard = new(Load);

    private readonly FrozenDictionary<string, CatalogSection> _byForm;

    private SectionCatalog(CatalogFile file)
    {
        DataVersion = file.DataVersion;
        Items = [.. file.Sections.Select(row => row.ToSection(file.Sources))];
        _byForm = Items
            .SelectMany(item => item.Aliases.Prepend(item.Section.Designation), (item, name) => KeyValuePair.Create(DesignationForm.Of(name), item))
            .ToDictionary(StringComparer.Ordinal) // throws where two sections share a designation
            .ToFrozenDictionary(StringComparer.Ordinal);
    }

    /// <summary>The catalog that comes with the engine.</summary>
    public static SectionCatalog Standard => s_standard.Value;

    /// <summary>Version of the data, echoed in answers.</summary>
    public string DataVersion { get; }

    /// <summary>All listed sections, in the order of the data.</summary>
    public IReadOnlyList<CatalogSection> Items { get; }

    /// <summary>The section of a designation, or null; see <see cref="FindItem"/>.</summary>
    public Section? Find(string designation) => FindItem(designation)?.Section;

    /// <summary>
    /// The section of a designation or alias, or null where there is none. Case, spaces and zeros at the end of decimals make no difference.
    /// Rounds, squares, hexagons and flats of any size are found by a designation that says it: <c>Round 37</c>, <c>Flat 80x12</c>, <c>Hex 22</c>, <c>Square 1-1/4 in</c>.
    /// </summary>
    public CatalogSection? FindItem(string designation)
    {
        var form = DesignationForm.Of(designation);
        if (_byForm.TryGetValue(form, out var listed))
            return listed;
        var sized = SizeDesignation.Find(form);
        // A size written in another way may still be a listed one: Round 4/2 in.
        return sized is null ? null : _byForm.GetValueOrDefault(DesignationForm.Of(sized.Section.Designation), sized);
    }

    /// <summary>The listed designations nearest to one by edit distance, nearest first; equally near ones in ordinal order.</summary>
    public IReadOnlyList<string> Nearest(string designation, int count)
    {
        var forms = Items.Select(item => DesignationForm.Of(item.Section.Designation));
        return [.. NearestNames.Of(DesignationForm.Of(designation), forms, count).Select(form => _byForm[form].Section.Designation)];
    }

    private static SectionCatalog Load()
    {
        using var stream = typeof(SectionCatalog).Assembly.GetManifestResourceStream("sections.json")
            ?? throw new InvalidDataException("The catalog of sections is not embedded.");
        return new(JsonSerializer.Deserialize(stream, CatalogJson.Default.CatalogFile) ?? throw new InvalidDataException("The catalog of sections is empty."));
    }
}
