namespace SawEngine.Core.Scheduling.Explanations;

/// <summary>Why a job, or a part of one, is where it is.</summary>
public sealed record JobExplanation
{
    /// <summary>The job.</summary>
    public required string JobId { get; init; }

    /// <summary>Its first step here, from 0.</summary>
    public int FirstStep { get; init; }

    /// <summary>Why it does not start earlier.</summary>
    public required JobWait WaitsFor { get; init; }

    /// <summary>Why it is on this saw.</summary>
    public required SawReason SawReason { get; init; }

    /// <summary>The other saw on which it would cost least; null where there is none, or it was not looked for.</summary>
    public string? OtherSawId { get; init; }

    /// <summary>By how much the schedule would cost more if it ran there, the others in their order, in millionths of the currency; negative where it would cost less.</summary>
    public long? OtherSawCostMicros { get; init; }
}
