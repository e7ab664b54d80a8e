namespace SawEngine.Core.Grades;

/// <summary>The grade that a designation names.</summary>
/// <param name="Grade">The grade; the hardest of several, since data for a harder condition are safe for a softer one.</param>
/// <param name="IsAmbiguous">Whether the designation names several conditions, so that a warning <c>ambiguous_grade</c> is due.</param>
/// <param name="Alternatives">The other grades that it names, hardest first.</param>
public sealed record GradeMatch(Grade Grade, bool IsAmbiguous, IReadOnlyList<Grade> Alternatives);
