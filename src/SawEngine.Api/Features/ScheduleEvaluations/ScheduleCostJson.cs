using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Schedules;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>What a schedule costs.</summary>
public sealed record ScheduleCostJson
{
    /// <summary>Cost in the request's currency, each cause at its weight: the sum of the terms.</summary>
    [Range(0, ScheduleTermsJson.MostAmount)]
    public required decimal Value { get; init; }

    /// <summary>The cost by cause.</summary>
    public required ScheduleTermsJson Terms { get; init; }
}
