namespace SawEngine.Api.Features.Plans;

/// <summary>All layouts for a section and grade.</summary>
public sealed record PlanNestJson
{
    /// <summary>Designation of the section.</summary>
    public required string Section { get; init; }

    /// <summary>Designation of the grade.</summary>
    public required string Grade { get; init; }

    /// <summary>Its layouts.</summary>
    public required IReadOnlyList<string> LayoutIds { get; init; }

    /// <summary>optimal, feasible, partial or infeasible.</summary>
    public required string Status { get; init; }

    /// <summary>Its cost and bound.</summary>
    public required ObjectiveJson Objective { get; init; }

    /// <summary>proof, effort or timeLimit.</summary>
    public required string StoppedBy { get; init; }
}
