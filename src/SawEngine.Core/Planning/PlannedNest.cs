using SawEngine.Core.Nesting;

namespace SawEngine.Core.Planning;

/// <summary>The nest of one section and grade, or of the grades that substitutes join.</summary>
public sealed record PlannedNest
{
    /// <summary>Designation of the section.</summary>
    public required string Section { get; init; }

    /// <summary>Designation of the grade ordered, of several the first.</summary>
    public required string Grade { get; init; }

    /// <summary>Designations of the other grades that its lines are ordered in or may be cut from, ordinal.</summary>
    public IReadOnlyList<string> JoinedGrades { get; init; } = [];

    /// <summary>Its layouts, by id.</summary>
    public required IReadOnlyList<string> LayoutIds { get; init; }

    /// <summary>What is known of it.</summary>
    public required NestStatus Status { get; init; }

    /// <summary>Cost of the layouts, handling of the bars included, in millionths of the objective's unit, at the positions of the saws that cut them.</summary>
    public required long ValueMicros { get; init; }

    /// <summary>No nest of the same pieces on these saws costs less.</summary>
    public required long BoundMicros { get; init; }

    /// <summary>What ended the search.</summary>
    public required StoppedBy StoppedBy { get; init; }
}
