namespace SawEngine.Core.Grades;

/// <summary>A group of materials of which the catalog has no grade, and whose chips and dust are kept apart nevertheless.</summary>
/// <param name="Group">The group.</param>
/// <param name="CautionCodes">Codes of the cautions that come with it, in order.</param>
public sealed record ChipGroup(string Group, IReadOnlyList<string> CautionCodes);
