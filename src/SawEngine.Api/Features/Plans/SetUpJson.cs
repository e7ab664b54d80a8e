using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core.SetUps;

namespace SawEngine.Api.Features.Plans;

/// <summary>One part of a set-up.</summary>
public sealed record SetUpJson
{
    /// <summary>What is changed.</summary>
    [KnownValues(SetUpRules.Section, SetUpRules.GradeGroup, SetUpRules.Blade, SetUpRules.Angle, SetUpRules.BladeWorn)]
    public required string Kind { get; init; }

    /// <summary>Start.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Finish.</summary>
    public required DateTimeOffset Finish { get; init; }

    /// <summary>Who is busy with it.</summary>
    [KnownValues("operator")]
    public required string Resource { get; init; }

    /// <summary>The operator; absent where the saw has none of its own.</summary>
    public string? OperatorId { get; init; }

    /// <summary>Share of its life that is left on the blade that is mounted, a used one; absent where it is new, or none is mounted.</summary>
    [Range(0, 1)]
    public decimal? MountedLife { get; init; }
}
