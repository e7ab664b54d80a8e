namespace SawEngine.Core.Scheduling;

/// <summary>What runs on a saw, one after the other.</summary>
/// <param name="SawId">The saw.</param>
/// <param name="Parts">Jobs, or parts of jobs, in order.</param>
public sealed record GivenSequence(string SawId, IReadOnlyList<GivenPart> Parts);
