using SawEngine.Core.Nesting;

namespace SawEngine.Core.Planning;

/// <summary>The nest of one cutting group for one class of saws.</summary>
/// <param name="Group">The group.</param>
/// <param name="SawClass">The saws; null where no line can be cut.</param>
/// <param name="Layouts">The layouts, at positions that fit every saw of the class.</param>
/// <param name="Unplaced">Pieces on no bar, by line.</param>
/// <param name="ValueMicros">Cost of the layouts, handling of the bars included.</param>
/// <param name="BoundMicros">No nest of the same pieces costs less on any choice of these saws.</param>
/// <param name="StoppedBy">What ended the search.</param>
internal sealed record GroupNest(
    CuttingGroup Group, SawClass? SawClass, IReadOnlyList<BarLayout> Layouts, IReadOnlyList<UnplacedPieces> Unplaced, long ValueMicros, long BoundMicros, StoppedBy StoppedBy = StoppedBy.Effort)
{
    /// <summary>What fetching a bar and racking its remainder costs at least on any of the saws, in millionths; part of the value and the bound.</summary>
    public long HandlingMicrosPerBar { get; init; }

    /// <summary>Number of pieces on no bar.</summary>
    public int UnplacedCount => Unplaced.Sum(pieces => pieces.Quantity);
}
