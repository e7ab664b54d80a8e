namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>Rules that only an edited schedule can break, beside those of the verifier.</summary>
public static class EditedScheduleRule
{
    /// <summary>A row states a start, a finish or steps that do not follow from its work.</summary>
    public const string StatementDiffers = "statement_differs";

    /// <summary>Two jobs without work have the same sequence on one saw: the order in which they are listed counts.</summary>
    public const string SequenceRepeated = "sequence_repeated";

    /// <summary>A job stands where the sequences of the saws bring it before one that it must follow; it is left out.</summary>
    public const string SequenceAgainstAfter = "sequence_against_after";
}
