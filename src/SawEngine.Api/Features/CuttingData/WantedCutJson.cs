using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.CuttingData;

/// <summary>A cut, and how many there are of it.</summary>
public sealed record WantedCutJson
{
    /// <summary>Id of the cut, unique.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string CutId { get; init; }

    /// <summary>Id of one of the request's own sections, or a designation of the catalog.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public required string Section { get; init; }

    /// <summary>Id of one of the request's own grades, or a designation of the catalog.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public required string Grade { get; init; }

    /// <summary>The face that the cut makes.</summary>
    public EndCutJson Face { get; init; } = new();

    /// <summary>Bars that are cut together; one where absent.</summary>
    public CutBundleJson? Bundle { get; init; }

    /// <summary>The pieces that the cut frees, for cycle time and accuracy of length; absent where neither is wanted.</summary>
    public CutPieceJson? Piece { get; init; }

    /// <summary>The most that the face may be out of square over the blade's way, in the length unit of the request; the blade feed is held back to it.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public decimal? Squareness { get; init; }

    /// <summary>Saws to compare, each once; all of the shop where absent.</summary>
    [MinLength(1), MaxLength(PlanLimits.Saws)]
    public IReadOnlyList<string>? SawIds { get; init; }

    /// <summary>The blade to cut with; the engine takes the best of each saw where absent.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? BladeId { get; init; }

    /// <summary>How many cuts, for the number of blades.</summary>
    [Range(1, Limits.TotalQuantity)]
    public int Quantity { get; init; } = 1;

    /// <summary>Free marks of the caller, which come back unchanged.</summary>
    [MaxLength(Limits.Attributes)]
    public IReadOnlyDictionary<string, string>? Attributes { get; init; }
}
