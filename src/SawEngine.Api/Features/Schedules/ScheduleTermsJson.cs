using System.ComponentModel.DataAnnotations;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Schedules;

/// <summary>What a schedule costs by cause, in the request's currency, each at its weight, in millionths.</summary>
public sealed record ScheduleTermsJson
{
    /// <summary>Amounts are held at the end of 64 bits of millionths.</summary>
    internal const double MostAmount = 1e13;

    /// <summary>Hours late, at each job's cost.</summary>
    [Range(0, MostAmount)]
    public required decimal Tardiness { get; init; }

    /// <summary>Hours of work, at each saw's machine and labor cost.</summary>
    [Range(0, MostAmount)]
    public required decimal Work { get; init; }

    /// <summary>Hours of set-ups, at the same cost; parts that are done beside one another count once.</summary>
    [Range(0, MostAmount)]
    public required decimal SetUps { get; init; }

    /// <summary>The extra price of the hours of work and set-ups in overtime.</summary>
    [Range(0, MostAmount)]
    public required decimal Overtime { get; init; }

    /// <summary>Hours until the last job is done, at makespanCostPerHour.</summary>
    [Range(0, MostAmount)]
    public required decimal Makespan { get; init; }

    /// <summary>Starts moved and saws changed against the earlier schedule.</summary>
    [Range(0, MostAmount)]
    public required decimal Stability { get; init; }

    /// <summary>The terms from millionths.</summary>
    public static ScheduleTermsJson Of(ScheduleTerms terms) => new()
    {
        Tardiness = Amount(terms.Tardiness),
        Work = Amount(terms.Work),
        SetUps = Amount(terms.SetUps),
        Overtime = Amount(terms.Overtime),
        Makespan = Amount(terms.Makespan),
        Stability = Amount(terms.Stability),
    };

    private static decimal Amount(Int128 micros) => ScheduleCost.Held(micros) / 1_000_000m;
}
