using System.ComponentModel.DataAnnotations;

namespace SawEngine.Api.Features.Plans;

/// <summary>Layouts that are cut together on one saw with one set-up.</summary>
public sealed record CuttingJobJson
{
    /// <summary>Id of the job.</summary>
    public required string JobId { get; init; }

    /// <summary>Its saw; absent where it is not scheduled.</summary>
    public string? SawId { get; init; }

    /// <summary>Place in the saw's sequence, from 1; absent where it is not scheduled.</summary>
    [Range(1, int.MaxValue)]
    public int? Sequence { get; init; }

    /// <summary>Designation of the section.</summary>
    public required string Section { get; init; }

    /// <summary>Designation of the grade.</summary>
    public required string Grade { get; init; }

    /// <summary>Its blade.</summary>
    public string? BladeId { get; init; }

    /// <summary>Set-up parts, by start.</summary>
    public required IReadOnlyList<SetUpJson> SetUps { get; init; }

    /// <summary>Start of the first bar.</summary>
    public DateTimeOffset? Start { get; init; }

    /// <summary>End of the last.</summary>
    public DateTimeOffset? Finish { get; init; }

    /// <summary>Cutting data.</summary>
    public CuttingJson? Cutting { get; init; }

    /// <summary>Where its time goes.</summary>
    public JobSecondsJson? Seconds { get; init; }

    /// <summary>Cautions for the operator, by id.</summary>
    public required IReadOnlyList<string> CautionIds { get; init; }
}
