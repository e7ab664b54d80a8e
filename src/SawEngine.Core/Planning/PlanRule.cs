namespace SawEngine.Core.Planning;

/// <summary>Rules that a whole plan keeps, beyond those of its nests and its schedule: stable snake_case codes.</summary>
public static class PlanRule
{
    /// <summary>Every ordered piece is on a bar or unplaced, once.</summary>
    public const string PieceNotAccounted = "piece_not_accounted";

    /// <summary>A line's planned pieces are those on bars whose job is scheduled.</summary>
    public const string PlannedCount = "planned_count_wrong";

    /// <summary>Every layout is cut by one job, which is scheduled or unscheduled.</summary>
    public const string LayoutWithoutJob = "layout_without_job";

    /// <summary>A job runs on a saw for which its layouts are valid.</summary>
    public const string SawNotAllowed = "saw_not_allowed";

    /// <summary>A job's blade is one of its saw's.</summary>
    public const string BladeNotOnSaw = "blade_not_on_saw";

    /// <summary>The bars of a job are of its section and grade, for which it has its cutting data.</summary>
    public const string JobMaterial = "job_material_wrong";

    /// <summary>All layouts together use no more of a stock item than there is.</summary>
    public const string StockOverused = "stock_overused";

    /// <summary>No more remnants of a section and grade are left than the rules allow.</summary>
    public const string TooManyRemnants = "too_many_remnants";

    /// <summary>The claims are the stock that the layouts use.</summary>
    public const string ClaimsWrong = "claims_wrong";

    /// <summary>No job starts before its orders are released and its material is there.</summary>
    public const string StartsBeforeRelease = "starts_before_release";

    /// <summary>A job takes as long as its times say.</summary>
    public const string DurationWrong = "duration_wrong";

    /// <summary>A job clamps once for each pass of the blade, of each cycle of its layouts.</summary>
    public const string CyclesWrong = "cycles_wrong";

    /// <summary>A cut bundle is within its saw's width and height as the bars of its job lie.</summary>
    public const string BundleDoesNotLieSo = "bundle_too_large_as_it_lies";

    /// <summary>An order is finished when the last of its jobs is, and late by what that is after the promise.</summary>
    public const string FinishWrong = "finish_wrong";

    /// <summary>A line's cost is the sum of its kinds, and material is what the layouts consume.</summary>
    public const string CostDoesNotAddUp = "cost_does_not_add_up";

    /// <summary>The status says how much is planned.</summary>
    public const string StatusWrong = "status_wrong";

    /// <summary>Ids are unique.</summary>
    public const string DuplicateId = "duplicate_id";
}
