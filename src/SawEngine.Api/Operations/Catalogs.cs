using SawEngine.Core.Grades;
using SawEngine.Core.Sections;

namespace SawEngine.Api.Operations;

/// <summary>The reference data that requests may name.</summary>
/// <param name="FindSection">The section of a designation; null where unknown.</param>
/// <param name="FindGrade">The grade of a designation; null where unknown.</param>
/// <param name="SectionDesignations">Designations of all sections, for suggestions.</param>
public sealed record Catalogs(Func<string, Section?> FindSection, Func<string, Grade?> FindGrade, IReadOnlyList<string> SectionDesignations);
