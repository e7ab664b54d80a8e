namespace SawEngine.Core.Scheduling;

/// <summary>A crane: one load at a time.</summary>
/// <param name="CraneId">Id, unique.</param>
/// <param name="SawIds">The saws that it reaches, by id.</param>
public sealed record ScheduleCrane(string CraneId, IReadOnlyList<string> SawIds);
