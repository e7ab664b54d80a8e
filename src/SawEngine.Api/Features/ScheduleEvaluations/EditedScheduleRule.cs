namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>Rules that only an edited schedule can break, beside those of the verifier.</summary>
public static class EditedScheduleRule
{
    /// <summary>A row states a start, a finish or steps that do not follow from its work.</summary>
    public const string StatementDiffers = "statement_differs";
}
