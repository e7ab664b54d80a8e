using SawEngine.Api.Features.Shop;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Nests;

/// <summary>What cutting takes of a bar, in the length unit of the request.</summary>
public sealed record NestCutRulesJson
{
    /// <summary>Width of material that a cut turns to chips, measured square to the cut.</summary>
    [LengthRange]
    public required decimal Kerf { get; init; }

    /// <summary>What is cut off each raw end, its kerf included; sawn ends need none.</summary>
    [LengthRange]
    public decimal Trim { get; init; }

    /// <summary>Shortest remainder that the saw can still hold; at 0 the last kerf may run out of the bar's end.</summary>
    [LengthRange]
    public decimal Tail { get; init; }

    /// <summary>Shortest piece that can be cut, on its short side.</summary>
    [LengthRange]
    public decimal ShortestPiece { get; init; }

    /// <summary>Longest piece that the outfeed takes; no limit where absent.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public decimal? LongestPiece { get; init; }

    /// <summary>Thinnest slice or wedge that may be cut between two pieces.</summary>
    [LengthRange]
    public decimal ThinnestSlice { get; init; }

    /// <summary>The cut bundles that are clamped; bars are cut singly where absent.</summary>
    public BundleCapacityJson? Bundle { get; init; }

    /// <summary>Cost of each pass of the blade, through one bar or a cut bundle, in the unit of the stock's cost.</summary>
    [CostRange(100_000)]
    public decimal CostPerCut { get; init; }
}
