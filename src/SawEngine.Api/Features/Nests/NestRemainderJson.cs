using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.Nests;

/// <summary>What is left of a bar behind the last cut, the tail included.</summary>
public sealed record NestRemainderJson
{
    /// <summary>Its length, on the short side where the last cut is mitered.</summary>
    [LengthRange]
    public required decimal Length { get; init; }

    /// <summary>Whether it goes back to the rack.</summary>
    [KnownValues(typeof(RemainderKind))]
    public required string Kind { get; init; }

    /// <summary>What it is credited with, its handling taken off, in the unit of the objective.</summary>
    [CostRange]
    public required decimal Value { get; init; }
}
