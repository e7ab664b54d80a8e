using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>A rule of the trade that the edited schedule breaks.</summary>
public sealed record ScheduleViolationJson
{
    /// <summary>Where it is in the body sent, as a JSON Pointer fragment.</summary>
    public required string Pointer { get; init; }

    /// <summary>The rule, for a program.</summary>
    [KnownValues(typeof(ScheduleRule), EditedScheduleRule.StatementDiffers, EditedScheduleRule.SequenceRepeated, EditedScheduleRule.SequenceAgainstAfter)]
    public required string Code { get; init; }

    /// <summary>What breaks it, for a person; times in it are seconds since planStart.</summary>
    public required string Detail { get; init; }
}
