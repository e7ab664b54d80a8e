using SawEngine.Core.Times;

namespace SawEngine.Core.Planning;

/// <summary>One pass of the blade with its times and its wear.</summary>
/// <param name="Cut">The pass.</param>
/// <param name="Time">Seconds by kind; unloading where a piece falls.</param>
/// <param name="BladeShare">Share of a new blade's life that it uses, in billionths, rounded up.</param>
internal sealed record PassWork(SawCut Cut, TimeParts Time, long BladeShare);
