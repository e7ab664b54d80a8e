namespace SawEngine.Core.Saws;

/// <summary>Times of a saw's motions, of handling and of set-ups, in seconds. Every value can be stated by the caller.</summary>
public sealed record SawTimes
{
    /// <summary>Pulling one bar from its rack and loading it.</summary>
    public required decimal LoadSecondsPerBar { get; init; }

    /// <summary>One stroke of the bar feed with clamp and return.</summary>
    public required decimal IndexSecondsPerStroke { get; init; }

    /// <summary>Clamping and unclamping around one cut.</summary>
    public required decimal ClampSecondsPerCut { get; init; }

    /// <summary>Approach, overtravel and retract of the blade around one cut.</summary>
    public required decimal ApproachSecondsPerCut { get; init; }

    /// <summary>Retract of the blade after one cut, where <see cref="ApproachSecondsPerCut"/> does not hold it.</summary>
    public decimal RetractSecondsPerCut { get; init; }

    /// <summary>Whether the bar feed moves while the blade retracts, so that only the longer of the two takes time.</summary>
    public bool IndexesWhileRetracting { get; init; }

    /// <summary>Swiveling, or tilting, to another angle.</summary>
    public required decimal SwivelSeconds { get; init; }

    /// <summary>Removing, deburring, marking and stacking one piece.</summary>
    public required decimal UnloadSecondsPerPiece { get; init; }

    /// <summary>Marking and racking a remnant, or binning scrap, for one bar.</summary>
    public required decimal RemainderSecondsPerBar { get; init; }

    /// <summary>Set-up for another section: vise, guides, stop, first-piece check.</summary>
    public required decimal SectionSetUpSeconds { get; init; }

    /// <summary>Set-up of another angle between two jobs; that of <see cref="SwivelSeconds"/> where null.</summary>
    public decimal? AngleSetUpSeconds { get; init; }

    /// <summary>Blade change with tension and tracking.</summary>
    public required decimal BladeChangeSeconds { get; init; }

    /// <summary>Cleaning for another grade group, so that chips stay apart.</summary>
    public required decimal GradeGroupSetUpSeconds { get; init; }
}
