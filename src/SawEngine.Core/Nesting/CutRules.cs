using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting;

/// <summary>What one saw, or the envelope of several, asks of a bar layout.</summary>
public sealed record CutRules
{
    /// <summary>Width of material that a cut turns to chips, measured square to the cut.</summary>
    public required Length Kerf { get; init; }

    /// <summary>What is cut off each raw end, kerf included, by end condition; a condition not listed needs none. Sawn ends need none.</summary>
    public IReadOnlyDictionary<EndCondition, Length> Trim { get; init; } = new Dictionary<EndCondition, Length>();

    /// <summary>The shortest remainder that the saw can still hold, measured on the short side of the last cut; zero where it needs none.</summary>
    public Length Tail { get; init; }

    /// <summary>Shortest piece, measured on its short side; zero where none is stated.</summary>
    public Length ShortestPiece { get; init; }

    /// <summary>Longest piece; null where none is stated.</summary>
    public Length? LongestPiece { get; init; }

    /// <summary>Thinnest slice or wedge between two pieces; zero where none is stated.</summary>
    public Length ThinnestSlice { get; init; }

    /// <summary>Heaviest bar or cut bundle; null where none is stated.</summary>
    public Mass? LoadLimit { get; init; }

    /// <summary>Largest sections; null where none is stated.</summary>
    public SawCapacity? Capacity { get; init; }

    /// <summary>Swivel of the saw; null where it cuts square only.</summary>
    public MiterRange? MiterRange { get; init; }

    /// <summary>Cut bundles that are clamped; null where bars are cut singly.</summary>
    public BundleCapacity? Bundle { get; init; }

    /// <summary>Whether <see cref="Capacity"/> and <see cref="MiterRange"/> bind; false where pieces are nested without a saw.</summary>
    public bool ForSaw => Capacity is not null;

    /// <summary>The trim that an end condition needs.</summary>
    public Length TrimFor(EndCondition condition) =>
        condition != EndCondition.Sawn && Trim.TryGetValue(condition, out var trim) ? trim : Length.Zero;
}
