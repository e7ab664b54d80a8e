using SawEngine.Core.Nesting;

namespace SawEngine.Api.Wire;

/// <summary>Codes of warnings; documented in docs/reason-codes.md. An ignored member keeps the code of its fault.</summary>
public static class WarningCode
{
    public const string AmbiguousGrade = "ambiguous_grade";
    public const string AttendedOnlyGrade = "attended_only_grade";
    public const string CostNotStated = "cost_not_stated";
    public const string FrozenStartNotKept = "frozen_start_not_kept";
    public const string JobOverdue = "job_overdue";
    public const string LateAtNoCost = "late_at_no_cost";
    public const string NominalLengthNotPlanned = "nominal_length_not_planned";
    public const string OpenLinesLimitExceeded = OpenLines.LimitExceeded;
    public const string RemnantLimitReached = RemnantLimit.Reached;
    public const string SimilarStockNotUsed = "similar_stock_not_used";
    public const string StatedTimesNotUsed = "stated_times_not_used";
    public const string SubstituteUsed = "substitute_used";
    public const string TrimNotUsed = "trim_not_used";
}
