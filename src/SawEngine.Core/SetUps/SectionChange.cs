namespace SawEngine.Core.SetUps;

/// <summary>How long one change of section takes.</summary>
/// <param name="From">Section that was cut before; null where it is unknown at the start of a plan.</param>
/// <param name="To">Section that is cut next.</param>
/// <param name="Seconds">Whole seconds, not negative.</param>
public readonly record struct SectionChange(string? From, string To, long Seconds);
