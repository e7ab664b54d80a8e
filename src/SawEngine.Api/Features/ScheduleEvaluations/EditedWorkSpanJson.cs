using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>A span of work without a pause, as the answer of a schedule writes it.</summary>
public sealed record EditedWorkSpanJson
{
    /// <summary>Its start; fractions of a second after planStart are cut off.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Its end, not before start; fractions of a second after planStart are cut off.</summary>
    public required DateTimeOffset Finish { get; init; }

    /// <summary>How many steps of the job are done in it.</summary>
    [Range(0, ScheduleLimits.Steps + ScheduleLimits.Loads)]
    public required int Steps { get; init; }

    /// <summary>Whose hands are busy with it; none where absent.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? OperatorId { get; init; }

    /// <summary>The crane that loads in it; none where absent.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? CraneId { get; init; }
}
