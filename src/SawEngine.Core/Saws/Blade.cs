using SawEngine.Core.Quantities;

namespace SawEngine.Core.Saws;

/// <summary>A band saw blade.</summary>
public sealed record Blade
{
    /// <summary>The caller's id.</summary>
    public required string BladeId { get; init; }

    /// <summary>Width of the band.</summary>
    public required Length Width { get; init; }

    /// <summary>Thickness of the band.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Width of material that the blade turns to chips, measured square to the cut.</summary>
    public required Length Kerf { get; init; }

    /// <summary>Coarsest teeth per inch; equal to <see cref="FinestTeethPerInch"/> for a constant pitch.</summary>
    public required decimal CoarsestTeethPerInch { get; init; }

    /// <summary>Finest teeth per inch.</summary>
    public required decimal FinestTeethPerInch { get; init; }

    /// <summary>Material of the teeth.</summary>
    public ToothMaterial ToothMaterial { get; init; } = ToothMaterial.Bimetal;

    /// <summary>Price of one blade.</summary>
    public Money Cost { get; init; }

    /// <summary>Area that one blade cuts in its life, in square meters; null where the grade's usual life counts.</summary>
    public decimal? LifeAreaSquareMeters { get; init; }

    /// <summary>Share of the life that is left on this blade, mounted or on the shelf, 0 to 1. A schedule counts it for the mounted blade; one that is mounted later is new.</summary>
    public decimal RemainingLife { get; init; } = 1m;

    /// <summary>Mean teeth per inch.</summary>
    public decimal MeanTeethPerInch => (CoarsestTeethPerInch + FinestTeethPerInch) / 2m;
}
