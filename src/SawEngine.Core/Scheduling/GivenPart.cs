namespace SawEngine.Core.Scheduling;

/// <summary>A job, or a part of one, in a given sequence.</summary>
/// <param name="JobId">The job.</param>
/// <param name="FirstStep">The first of its steps that is done, from 0.</param>
/// <param name="Steps">How many are done; all that follow where null.</param>
public readonly record struct GivenPart(string JobId, int FirstStep = 0, int? Steps = null);
