using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Nesting.Alternatives;

namespace SawEngine.Api.Features.Nests;

/// <summary>
/// How far to look for small changes that save a bar. Of each section and grade the twelve entries of `pieces` with the greatest length in all are looked at, each by
/// itself, and twelve stock items. Each change is nested with quick effort, so this can take some times as long as the nest itself.
/// </summary>
public sealed record NearMissLimitsJson
{
    /// <summary>The most by which pieces may be shorter, in the length unit of the request; changes are eighths of it, rounded down to 0.0127 mm (0.0005 in). Pieces that are not longer than twice this are left as they are.</summary>
    [LengthRange]
    public decimal ShorterBy { get; init; }

    /// <summary>The most by which a quantity may be less.</summary>
    [Range(0, Limits.FewerPieces)]
    public int FewerBy { get; init; }

    /// <summary>Whether to look at one more bar of stock that is used up.</summary>
    public bool OneMoreBar { get; init; }

    internal NearMissLimits ToLimits(LengthScale scale) => new(scale.Read(ShorterBy), FewerBy, OneMoreBar);
}
