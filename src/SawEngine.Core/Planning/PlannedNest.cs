using SawEngine.Core.Nesting;

namespace SawEngine.Core.Planning;

/// <summary>The nest of one section and grade.</summary>
public sealed record PlannedNest
{
    /// <summary>Designation of the section.</summary>
    public required string Section { get; init; }

    /// <summary>Designation of the grade.</summary>
    public required string Grade { get; init; }

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
