using System.ComponentModel.DataAnnotations;

namespace SawEngine.Api.Features.Shop;

/// <summary>Times of a saw's motions, of handling and of set-ups. What is not stated is the engine's default and is echoed in the answer.</summary>
public sealed record SawTimesJson
{
    /// <summary>Pulling one bar from its rack and loading it, in seconds.</summary>
    [Range(0, 86400)]
    public decimal? LoadSecondsPerBar { get; init; }

    /// <summary>One stroke of the bar feed with clamp and return, in seconds.</summary>
    [Range(0, 86400)]
    public decimal? IndexSecondsPerStroke { get; init; }

    /// <summary>Clamping and unclamping around one cut, in seconds.</summary>
    [Range(0, 86400)]
    public decimal? ClampSecondsPerCut { get; init; }

    /// <summary>Approach, overtravel and retract of the blade around one cut, in seconds.</summary>
    [Range(0, 86400)]
    public decimal? ApproachSecondsPerCut { get; init; }

    /// <summary>Retract of the blade after one cut, where `approachSecondsPerCut` does not hold it, in seconds.</summary>
    [Range(0, 86400)]
    public decimal RetractSecondsPerCut { get; init; }

    /// <summary>Whether the bar feed moves while the blade retracts, so that only the longer of the two takes time.</summary>
    public bool IndexesWhileRetracting { get; init; }

    /// <summary>Swiveling, or tilting, to another angle, in seconds.</summary>
    [Range(0, 86400)]
    public decimal? SwivelSeconds { get; init; }

    /// <summary>Removing, deburring, marking and stacking one piece, in seconds.</summary>
    [Range(0, 86400)]
    public decimal? UnloadSecondsPerPiece { get; init; }

    /// <summary>Marking and racking a remnant, or binning scrap, for one bar, in seconds.</summary>
    [Range(0, 86400)]
    public decimal? RemainderSecondsPerBar { get; init; }

    /// <summary>Set-up for another section: vise, guides, stop, first-piece check, in seconds.</summary>
    [Range(0, 86400)]
    public decimal? SectionSetUpSeconds { get; init; }

    /// <summary>Set-up for another angle between two jobs of a schedule, in seconds; swivelSeconds where absent. In a plan angles change from cut to cut.</summary>
    [Range(0, 86400)]
    public decimal? AngleSetUpSeconds { get; init; }

    /// <summary>Blade change with tension and tracking, in seconds.</summary>
    [Range(0, 86400)]
    public decimal? BladeChangeSeconds { get; init; }

    /// <summary>Cleaning for another grade group, so that chips stay apart, in seconds.</summary>
    [Range(0, 86400)]
    public decimal? GradeGroupSetUpSeconds { get; init; }
}
