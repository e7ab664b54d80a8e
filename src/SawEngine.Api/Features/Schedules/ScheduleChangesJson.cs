using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Schedules;

/// <summary>A schedule against an earlier one, over the jobs that are in both.</summary>
public sealed record ScheduleChangesJson
{
    /// <summary>Jobs that are in both.</summary>
    [Range(0, ScheduleLimits.Jobs)]
    public required int JobsCompared { get; init; }

    /// <summary>Sum of the hours by which starts move, earlier or later, to 4 decimals.</summary>
    [Range(0, Limits.Amount)]
    public required decimal HoursMoved { get; init; }

    /// <summary>Jobs that go to another saw.</summary>
    [Range(0, ScheduleLimits.Jobs)]
    public required int SawChanges { get; init; }

    /// <summary>Pairs of jobs that stay together on one saw and change their order there.</summary>
    [Range(0, int.MaxValue)]
    public required int ReversedPairs { get; init; }

    /// <summary>Jobs that are late now and were in time before, by id. Where the earlier schedule states no finish, it is not known.</summary>
    public required IReadOnlyList<string> PromisesNewlyBroken { get; init; }

    /// <summary>The jobs whose start or saw is another one, by id.</summary>
    public required IReadOnlyList<MovedJobJson> Moved { get; init; }
}
