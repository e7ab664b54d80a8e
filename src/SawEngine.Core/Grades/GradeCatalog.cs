using System.Collections.Frozen;

namespace SawEngine.Core.Grades;

/// <summary>The grades that the engine knows, found by any of their designations.</summary>
/// <remarks>
/// Designations of two standards that are alike but not the same (A36 and S235JR, 304 and 1.4301) are two grades with the same cutting data:
/// whether one may be cut for the other is for the order to say.
/// Where a published blade speed lies outside the band from which a grade's cutting rate comes, the rate keeps the band's midpoint and is stated at the published speed.
/// </remarks>
public sealed class GradeCatalog
{
    private static readonly Lazy<GradeCatalog> LazyStandard = new(GradeCatalogData.Read);

    private readonly FrozenDictionary<string, Grade[]> byNormalForm;
    private readonly string[] designations;

    internal GradeCatalog(string dataVersion, IReadOnlyList<Grade> grades, IReadOnlyList<ChipGroup> chipGroups, IReadOnlyList<UnitPowerByHardness> unitPowers)
    {
        DataVersion = dataVersion;
        ChipGroups = [.. chipGroups.OrderBy(group => group.Group, StringComparer.Ordinal)];
        UnitPowers = unitPowers;
        Items = [.. grades.OrderBy(grade => grade.Designation, StringComparer.Ordinal)];
        Groups = [.. Items.Select(grade => grade.Group).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        designations = [.. Items.SelectMany(grade => grade.Designations).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        byNormalForm = Items
            .SelectMany(grade => grade.Designations.Select(designation => (Form: GradeSpelling.FormOf(designation), Grade: grade)).Distinct())
            .GroupBy(pair => pair.Form, pair => pair.Grade, StringComparer.Ordinal)
            .ToFrozenDictionary(group => group.Key, group => HardestFirst(group), StringComparer.Ordinal);
    }

    /// <summary>The grades that come with the engine.</summary>
    public static GradeCatalog Standard => LazyStandard.Value;

    /// <summary>Version of the data.</summary>
    public string DataVersion { get; }

    /// <summary>All grades, in ordinal order of designation.</summary>
    public IReadOnlyList<Grade> Items { get; }

    /// <summary>All groups of materials, in ordinal order.</summary>
    public IReadOnlyList<string> Groups { get; }

    /// <summary>Groups of materials that no grade of the catalog is of, in ordinal order.</summary>
    public IReadOnlyList<ChipGroup> ChipGroups { get; }

    /// <summary>Unit power by hardness for the groups of steels of the published table.</summary>
    public IReadOnlyList<UnitPowerByHardness> UnitPowers { get; }

    /// <summary>The grade of a designation in any case, spaced and hyphenated in any way; null where it is unknown. The hardest where it names several.</summary>
    public Grade? Find(string designation) => Match(designation)?.Grade;

    /// <summary>As <see cref="Find"/>, with what else the designation could mean; null where it is unknown.</summary>
    public GradeMatch? Match(string designation)
    {
        foreach (var (form, fits) in GradeSpelling.ReadingsOf(GradeSpelling.FormOf(designation)))
        {
            if (byNormalForm.GetValueOrDefault(form)?.Where(fits).ToArray() is { Length: > 0 } grades)
                return MatchOf(form, grades);
        }
        return null;
    }

    /// <summary>The known designations that are most like an unknown one, most alike first.</summary>
    public IReadOnlyList<string> Nearest(string designation, int count) => NearestNames.OfDesignations(designation, designations, GradeSpelling.FormOf, count);

    /// <summary>
    /// A grade that the request states itself. What it leaves out comes from the grade it is like, else from the slowest grade of its group.
    /// Null where the catalog knows neither, nor all values are stated.
    /// </summary>
    public Grade? FromCaller(CallerGrade stated)
    {
        var ofGroup = SlowestOf(stated.Group);
        var like = stated.LikeGrade is { } designation ? Find(designation) : ofGroup;
        var ofChips = ChipGroups.FirstOrDefault(known => string.Equals(known.Group, stated.Group, StringComparison.OrdinalIgnoreCase));
        if (like is not null)
            return GradeFromCaller.Complete(stated, like, ofGroup?.CautionCodes ?? ofChips?.CautionCodes ?? []);
        return stated is { LikeGrade: null, IsComplete: true } && (stated.Group is null || ofChips is not null) ? GradeFromCaller.Own(stated, ofChips) : null;
    }

    private Grade? SlowestOf(string? group) => Items
        .Where(grade => string.Equals(grade.Group, group, StringComparison.OrdinalIgnoreCase))
        .MinBy(grade => grade.ReferenceCuttingRate.Value);

    private static GradeMatch MatchOf(string form, Grade[] grades)
    {
        // The unique designation of one condition is never ambiguous, even where another grade lists it too.
        var listed = Array.Find(grades, grade => GradeSpelling.FormOf(grade.Designation) == form);
        return listed is not null ? new(listed, false, []) : new(grades[0], grades.Length > 1, grades[1..]);
    }

    private static Grade[] HardestFirst(IEnumerable<Grade> grades) =>
        [.. grades.OrderByDescending(grade => grade.HighestHardnessHb).ThenBy(grade => grade.Designation, StringComparer.Ordinal)];
}
