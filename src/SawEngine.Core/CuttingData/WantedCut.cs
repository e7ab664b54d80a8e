using SawEngine.Core.Grades;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Sections;

namespace SawEngine.Core.CuttingData;

/// <summary>A cut that is wanted, and what is asked of it.</summary>
public sealed record WantedCut
{
    /// <summary>The section as the bar comes.</summary>
    public required Section Section { get; init; }

    /// <summary>The grade.</summary>
    public required Grade Grade { get; init; }

    /// <summary>The face that the cut makes, as the bar comes.</summary>
    public EndCut Face { get; init; }

    /// <summary>The bars that are cut together.</summary>
    public CutBundle Bundle { get; init; } = CutBundle.Single;

    /// <summary>The blade to cut with; null for the best of each saw.</summary>
    public string? BladeId { get; init; }

    /// <summary>The most that the face may be out of square over the blade's way; null where nothing is ordered.</summary>
    public Length? Squareness { get; init; }

    /// <summary>Length of the pieces; null where none is stated.</summary>
    public Length? PieceLength { get; init; }

    /// <summary>Tolerance of that length; null where none is ordered.</summary>
    public Tolerance? Tolerance { get; init; }

    /// <summary>The length that is cut, the middle of the tolerance.</summary>
    public Length? AimedLength => PieceLength is { } length ? length + (Tolerance ?? default).Middle : null;
}
