namespace SawEngine.Core.SetUps;

/// <summary>How long one change of section, grade group or angle takes.</summary>
/// <param name="From">What was cut before; null where it is unknown at the start of a plan.</param>
/// <param name="To">What is cut next.</param>
/// <param name="Seconds">Whole seconds, not negative.</param>
public readonly record struct SetUpChange(string? From, string To, long Seconds);
