using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Plans;

/// <summary>A sales order in the plan.</summary>
public sealed record PlanOrderJson
{
    /// <summary>Id of the order.</summary>
    public required string OrderId { get; init; }

    /// <summary>Promised finish.</summary>
    public DateTimeOffset? Due { get; init; }

    /// <summary>When the last planned piece is cut; absent where none is.</summary>
    public DateTimeOffset? Finish { get; init; }

    /// <summary>Hours from due to finish, 0 where in time; absent without due or finish.</summary>
    [Range(0, int.MaxValue)]
    public decimal? LateHours { get; init; }

    /// <summary>Why it is late, and what would cure it; absent where it is in time.</summary>
    public LatenessJson? Lateness { get; init; }

    /// <summary>Sum of the lines; absent where none is planned.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public decimal? Cost { get; init; }

    /// <summary>Its lines, by id.</summary>
    public required IReadOnlyList<PlanLineJson> Lines { get; init; }

    /// <summary>The caller's marks, unchanged.</summary>
    public IReadOnlyDictionary<string, string>? Attributes { get; init; }
}
