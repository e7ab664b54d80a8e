using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Saws;

namespace SawEngine.Api.Features.Shop;

/// <summary>A band saw blade.</summary>
public sealed record BladeJson
{
    /// <summary>Id of the blade, unique.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string BladeId { get; init; }

    /// <summary>Width of the band in the length unit of the request.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public required decimal Width { get; init; }

    /// <summary>Thickness of the band in the length unit of the request.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public required decimal Thickness { get; init; }

    /// <summary>Width of material that it turns to chips, measured square to the cut, in the length unit of the request: at least the thickness.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public required decimal Kerf { get; init; }

    /// <summary>Teeth per inch, each 0.1 to 50: one number for a constant pitch, or the coarsest and the finest of a variable one, coarsest first.</summary>
    [MinLength(1), MaxLength(2), Range(0.1, 50)]
    public required IReadOnlyList<decimal> TeethPerInch { get; init; }

    /// <summary>Material of the teeth.</summary>
    public ToothMaterial ToothMaterial { get; init; } = ToothMaterial.Bimetal;

    /// <summary>Price of one blade in the request's currency.</summary>
    [CostRange]
    public decimal Cost { get; init; }

    /// <summary>Area that one blade cuts in its life in m2; the usual life for the grade where absent.</summary>
    [Range(0.001, 100000)]
    public decimal? LifeAreaM2 { get; init; }

    /// <summary>Share of the life that is left on this blade where it is mounted at planStart. Used ones that lie ready stand in the saw's `shelf`; any other is new.</summary>
    [Range(0, 1)]
    public decimal RemainingLife { get; init; } = 1m;
}
