namespace SawEngine.Core.Scheduling.Explanations;

/// <summary>Why a delivery is late, and what would cure it.</summary>
public sealed record LateDelivery
{
    /// <summary>The delivery.</summary>
    public required string DeliveryId { get; init; }

    /// <summary>Its job that ends last.</summary>
    public required string JobId { get; init; }

    /// <summary>Seconds from the promise to its end.</summary>
    public required long SecondsLate { get; init; }

    /// <summary>What that costs, in millionths of the currency.</summary>
    public required long CostMicros { get; init; }

    /// <summary>Seconds that it would be late if the job had its quickest saw to itself: no order of the jobs makes it less late.</summary>
    public required long SecondsLateAlone { get; init; }

    /// <summary>What the time until its end is spent on; none of no time.</summary>
    public required IReadOnlyList<LatenessCause> Causes { get; init; }

    /// <summary>What would make it less late, the best first; none where nothing that was tried does.</summary>
    public required IReadOnlyList<LatenessCure> Cures { get; init; }
}
