namespace SawEngine.Core.SetUps;

/// <summary>One thing that is changed between two jobs, and how long it takes.</summary>
/// <param name="Kind">Its code: <c>section</c>, <c>gradeGroup</c>, <c>blade</c>, <c>bladeWorn</c>.</param>
/// <param name="Seconds">Whole seconds.</param>
public sealed record SetUpPart(string Kind, long Seconds);
