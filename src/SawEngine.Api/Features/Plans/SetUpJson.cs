using SawEngine.Api.Wire;
using SawEngine.Core.SetUps;

namespace SawEngine.Api.Features.Plans;

/// <summary>One part of a set-up.</summary>
public sealed record SetUpJson
{
    /// <summary>What is changed.</summary>
    [KnownValues(SetUpRules.Section, SetUpRules.GradeGroup, SetUpRules.Blade, SetUpRules.BladeWorn)]
    public required string Kind { get; init; }

    /// <summary>Start.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Finish.</summary>
    public required DateTimeOffset Finish { get; init; }

    /// <summary>Who is busy with it.</summary>
    [KnownValues("operator")]
    public required string Resource { get; init; }
}
