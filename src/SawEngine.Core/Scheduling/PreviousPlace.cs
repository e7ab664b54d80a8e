namespace SawEngine.Core.Scheduling;

/// <summary>Where a job was in an earlier schedule.</summary>
/// <param name="JobId">The job.</param>
/// <param name="SawId">Its saw then.</param>
/// <param name="Start">Start of its work then, in seconds since the start of this plan.</param>
public sealed record PreviousPlace(string JobId, string SawId, long Start);
