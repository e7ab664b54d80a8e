using SawEngine.Core.Costs;
using SawEngine.Core.Orders;

namespace SawEngine.Core.Planning;

/// <summary>What the plan does for an order line.</summary>
public sealed record PlannedLine
{
    /// <summary>The line.</summary>
    public required OrderLine Line { get; init; }

    /// <summary>Pieces that are on a bar and in the schedule.</summary>
    public required int Planned { get; init; }

    /// <summary>When the last planned piece is done, in seconds since the start of the plan; null where none is planned.</summary>
    public long? Finish { get; init; }

    /// <summary>The jobs that cut it, by id.</summary>
    public required IReadOnlyList<string> JobIds { get; init; }

    /// <summary>Saw time of its planned pieces in seconds, set-ups included, to tenths.</summary>
    public decimal Seconds { get; init; }

    /// <summary>What its planned pieces cost.</summary>
    public required LineCost Cost { get; init; }
}
