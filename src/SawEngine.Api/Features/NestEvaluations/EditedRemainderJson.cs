using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>What the edited nest says of what is left of a bar. It is checked and counts for nothing, as it follows from the positions; but of the kind see there.</summary>
public sealed record EditedRemainderJson
{
    /// <summary>Its length.</summary>
    [LengthRange]
    public decimal? Length { get; init; }

    /// <summary>Whether it goes back to the rack. Where the rules limit how many remnants are left, this says which long remainders are kept; left out, those that gain most.</summary>
    public RemainderKind? Kind { get; init; }

    /// <summary>What it is credited with, in the unit of the objective.</summary>
    [CostRange]
    public decimal? Value { get; init; }
}
