using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>What the edited nest says of what is left of a bar. It is checked and counts for nothing: what is left follows from the positions.</summary>
public sealed record EditedRemainderJson
{
    /// <summary>Its length.</summary>
    [LengthRange]
    public decimal? Length { get; init; }

    /// <summary>Whether it goes back to the rack.</summary>
    public RemainderKind? Kind { get; init; }

    /// <summary>What it is credited with, in the unit of the objective.</summary>
    [CostRange]
    public decimal? Value { get; init; }
}
