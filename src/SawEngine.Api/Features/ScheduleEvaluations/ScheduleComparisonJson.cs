using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Schedules;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Planning;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>The engine's own schedule of the same jobs, and how the edited one stands to it.</summary>
public sealed record ScheduleComparisonJson
{
    /// <summary>Whether the engine scheduled all jobs, some, or none.</summary>
    [KnownValues(typeof(PlanStatus))]
    public required string Status { get; init; }

    /// <summary>What the engine's schedule costs, and what is proved.</summary>
    public required ScheduleObjectiveJson Objective { get; init; }

    /// <summary>The engine's schedule in figures. Where it schedules other jobs than the edited one, the costs are not for the same work.</summary>
    public required ScheduleTotalsJson Totals { get; init; }

    /// <summary>Value of the edited schedule less that of the engine's: positive where the edited one costs more.</summary>
    [Range(-ScheduleTermsJson.MostAmount, ScheduleTermsJson.MostAmount)]
    public required decimal Difference { get; init; }

    /// <summary>Value of the edited schedule divided by that of the engine's, to 6 decimals, half to even; absent where the engine's is 0.</summary>
    [Range(0, ScheduleTermsJson.MostAmount * 1_000_000)]
    public decimal? Ratio { get; init; }

    /// <summary>What ended the engine's search: the proof, the effort's work, or the clock.</summary>
    [KnownValues(typeof(StoppedBy))]
    public required string StoppedBy { get; init; }
}
