using SawEngine.Api.Features.Nests;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.Plans;

/// <summary>All layouts for a section and grade, or for the grades that substitutes join.</summary>
public sealed record PlanNestJson
{
    /// <summary>Designation of the section.</summary>
    public required string Section { get; init; }

    /// <summary>Designation of the grade ordered, of several the first.</summary>
    public required string Grade { get; init; }

    /// <summary>Designations of the other grades that its lines are ordered in or may be cut from; absent where there are none.</summary>
    public IReadOnlyList<string>? JoinedGrades { get; init; }

    /// <summary>Its layouts, by id.</summary>
    public required IReadOnlyList<string> LayoutIds { get; init; }

    /// <summary>All placed and proved best, all placed but for accepted under quantities, some placed, or none.</summary>
    [KnownValues("optimal", "feasible", "partial", "infeasible")]
    public required string Status { get; init; }

    /// <summary>Its cost and bound: material less remainders and, where stock has a cost, pulling and handling of each bar, loading and racking included.</summary>
    public required NestObjectiveJson Objective { get; init; }

    /// <summary>What ended the search.</summary>
    [KnownValues(typeof(StoppedBy))]
    public required string StoppedBy { get; init; }
}
