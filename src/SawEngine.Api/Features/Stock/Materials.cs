using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.Grades;
using SawEngine.Core.Sections;

namespace SawEngine.Api.Features.Stock;

/// <summary>
/// What the names of sections and grades in a request stand for: an item of the request's own lists, else of the catalogs.
/// An own item also takes the place of the catalog's item whose designation it has, whatever way that is written.
/// </summary>
public sealed class Materials
{
    private readonly Dictionary<string, SectionJson> _ownSections;
    private readonly Dictionary<string, GradeJson> _ownGrades;
    private readonly Dictionary<string, Section?> _sections = new(StringComparer.Ordinal);
    private readonly Dictionary<string, GradeMatch?> _grades = new(StringComparer.Ordinal);
    private int _suggestionsLeft = Limits.FaultsReported;

    /// <summary>The materials of a request.</summary>
    public Materials(IEnumerable<SectionJson> sections, IEnumerable<GradeJson> grades, LengthScale scale)
    {
        Scale = scale;
        _ownSections = sections.DistinctBy(section => section.SectionId).ToDictionary(section => section.SectionId, StringComparer.Ordinal);
        _ownGrades = grades.DistinctBy(grade => grade.GradeId).ToDictionary(grade => grade.GradeId, StringComparer.Ordinal);
    }

    /// <summary>Reads the lengths of the request.</summary>
    public LengthScale Scale { get; }

    /// <summary>Whether a name stands for a section, be it a faulty one of the request's own.</summary>
    public bool KnowsSection(string name) => _ownSections.ContainsKey(name) || Section(name) is not null;

    /// <summary>Whether a name stands for a grade, be it a faulty one of the request's own.</summary>
    public bool KnowsGrade(string name) => _ownGrades.ContainsKey(name) || GradeCatalog.Standard.Match(name) is not null;

    /// <summary>The section of a name; null where it is unknown or its dimensions make none.</summary>
    public Section? Section(string name)
    {
        if (!_sections.TryGetValue(name, out var section))
            _sections.Add(name, section = _ownSections.TryGetValue(name, out var own) ? own.ToSection(Scale) : OfCatalog(name));
        return section;

        Section? OfCatalog(string designation) => SectionCatalog.Standard.Find(designation) is not { } listed ? null
            : _ownSections.ContainsKey(listed.Designation) ? Section(listed.Designation)
            : listed;
    }

    /// <summary>What a section is called; the name itself where it is unknown.</summary>
    public string SectionName(string name) => Section(name)?.Designation ?? name;

    /// <summary>The grade of a name; null where it is unknown.</summary>
    public Grade? Grade(string name) => GradeMatch(name)?.Grade;

    /// <summary>The grades of names that stand in for one, by designation, ordinal: each once, and never the one itself.</summary>
    public ValueList<Grade> Substitutes(string? own, IEnumerable<string> names) =>
    [
        .. names.Select(Grade).OfType<Grade>().Distinct().Where(grade => own is null || grade != Grade(own)).OrderBy(grade => grade.Designation, StringComparer.Ordinal),
    ];

    /// <summary>The grade of a name, with what else it could mean; null where it is unknown.</summary>
    public GradeMatch? GradeMatch(string name)
    {
        if (!_grades.TryGetValue(name, out var match))
            _grades.Add(name, match = _ownGrades.TryGetValue(name, out var own) ? OfRequest(own) : OfCatalog(name));
        return match;

        static GradeMatch? OfRequest(GradeJson own) => own.ToGrade() is { } grade ? new(grade, false, []) : null;

        GradeMatch? OfCatalog(string designation) => GradeCatalog.Standard.Match(designation) is not { } listed ? null
            : _ownGrades.ContainsKey(listed.Grade.Designation) ? GradeMatch(listed.Grade.Designation)
            : listed;
    }

    /// <summary>A warning for each of the names that stands for several grades, in ordinal order, at the first place that uses it. Names without a grade are passed over.</summary>
    public IReadOnlyList<WarningJson> AmbiguousGrades(IEnumerable<(string? Name, string Pointer)> uses) =>
    [
        .. uses.Where(use => use.Name is not null && GradeMatch(use.Name) is { IsAmbiguous: true })
            .DistinctBy(use => use.Name, StringComparer.Ordinal)
            .OrderBy(use => use.Name, StringComparer.Ordinal)
            .Select(use => AmbiguousGrade(use.Name!, use.Pointer, GradeMatch(use.Name!)!)),
    ];

    private static WarningJson AmbiguousGrade(string name, string pointer, GradeMatch match) => new()
    {
        Code = WarningCode.AmbiguousGrade,
        Pointer = pointer,
        Detail = $"{Quoted.Text(name)} names several conditions and is read as the hardest, {match.Grade.Designation}; it could also be "
            + $"{string.Join(" or ", match.Alternatives.Select(grade => grade.Designation))}: state the one that is meant.",
    };

    /// <summary>A sentence that names the sections nearest to an unknown one.</summary>
    public string NearestSections(string name) => Suggestion(name, _ownSections.Keys, SectionCatalog.Standard.Nearest);

    /// <summary>A sentence that names the grades nearest to an unknown one.</summary>
    public string NearestGrades(string name) => Suggestion(name, _ownGrades.Keys, GradeCatalog.Standard.Nearest);

    /// <summary>Only as many as can be reported: a search through the catalog takes time.</summary>
    private string Suggestion(string name, IEnumerable<string> own, Func<string, int, IReadOnlyList<string>> nearest) => _suggestionsLeft-- <= 0
        ? ""
        : " Nearest: " + string.Join(", ", nearest(name, 3).Append(NearestName.Of(name, own)).Where(found => found is not null).Select(found => Quoted.Text(found!))) + ".";
}
