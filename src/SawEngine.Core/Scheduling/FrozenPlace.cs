namespace SawEngine.Core.Scheduling;

/// <summary>
/// Where a job stays, whatever would be better: it runs on its saw from its start on, or from the first moment after it at which the saw is attended and
/// done with what was frozen before. The frozen jobs of a saw are its first, in the order of their starts.
/// </summary>
/// <param name="SawId">The saw.</param>
/// <param name="Start">Start of its work in seconds since the start of the plan; at or before 0 it is running, and the saw is set up for it.</param>
public sealed record FrozenPlace(string SawId, long Start);
