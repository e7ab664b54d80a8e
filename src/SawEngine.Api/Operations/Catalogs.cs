using SawEngine.Core.Grades;
using SawEngine.Core.Sections;

namespace SawEngine.Api.Operations;

/// <summary>The reference data that requests may name.</summary>
/// <param name="FindSection">The section of a designation; null where unknown.</param>
/// <param name="FindGrade">The grade of a designation; null where unknown.</param>
/// <param name="NearestSections">Designations like an unknown one, the most alike first.</param>
public sealed record Catalogs(Func<string, Section?> FindSection, Func<string, Grade?> FindGrade, Func<string, IReadOnlyList<string>> NearestSections)
{
    private const int Suggestions = 3;

    /// <summary>The catalogs that come with the engine; read when first used.</summary>
    public static readonly Catalogs Standard = new(
        static designation => SectionCatalog.Standard.Find(designation),
        static designation => GradeCatalog.Standard.Find(designation),
        static designation => SectionCatalog.Standard.Nearest(designation, Suggestions));
}
