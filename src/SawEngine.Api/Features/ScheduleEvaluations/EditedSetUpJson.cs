using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>One part of a set-up, as the answer of a schedule writes it.</summary>
public sealed record EditedSetUpJson
{
    /// <summary>What is changed.</summary>
    public required ScheduledSetUpKind Kind { get; init; }

    /// <summary>Start; fractions of a second after planStart are cut off.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Finish, not before start; fractions of a second after planStart are cut off.</summary>
    public required DateTimeOffset Finish { get; init; }

    /// <summary>What kind of hands are busy with it. It counts for nothing.</summary>
    [MaxLength(Limits.IdLength)]
    public string? Resource { get; init; }

    /// <summary>The operator; none where absent.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? OperatorId { get; init; }

    /// <summary>Share of its life that is left on the blade that is mounted; a new one where absent.</summary>
    [Range(0, 1)]
    public decimal? MountedLife { get; init; }
}
