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
            .SelectMany(item => item.Aliases.Prepend(item.Section.Designation), (item, name) => KeyValuePair.Create(KeyOf(name), item))
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
    /// The section of a designation or alias, or null where there is none. Case, spaces, zeros at the end of decimals, and whether a part of an inch is a fraction or
    /// a decimal make no difference; usual abbreviations are read (see <see cref="SectionSpelling"/>). What two standards size alike is none of the two.
    /// Rounds, squares, hexagons and flats of any size are found by a designation that says it: <c>Round 37</c>, <c>Flat 80x12</c>, <c>Hex 22</c>, <c>Square 1-1/4 in</c>; in mm unless marked, and in inches where there is a fraction.
    /// </summary>
    public CatalogSection? FindItem(string designation)
    {
        foreach (var form in SectionSpelling.ReadingsOf(DesignationForm.Of(designation)))
        {
            if (_byForm.TryGetValue(SectionSpelling.InDecimals(form), out var listed))
                return listed;
            // A size written in another way may still be a listed one: Round 4/2 in.
            if (SizeDesignation.Find(form) is { } sized)
                return _byForm.GetValueOrDefault(KeyOf(sized.Section.Designation), sized);
        }
        return null;
    }

    /// <summary>The listed designations nearest to one: those of the same kind and first size, then by edit distance.</summary>
    public IReadOnlyList<string> Nearest(string designation, int count) =>
        NearestNames.OfDesignations(designation, Items.Select(item => item.Section.Designation), KeyOf, count);

    private static string KeyOf(string designation) => SectionSpelling.InDecimals(DesignationForm.Of(designation));

    private static SectionCatalog Load()
    {
        using var stream = typeof(SectionCatalog).Assembly.GetManifestResourceStream("sections.json")
            ?? throw new InvalidDataException("The catalog of sections is not embedded.");
        return new(JsonSerializer.Deserialize(stream, CatalogJson.Default.CatalogFile) ?? throw new InvalidDataException("The catalog of sections is empty."));
    }
}
