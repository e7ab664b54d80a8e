using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core;
using SawEngine.Core.Saws;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>A usual blade, which saws are taken to have where they list none; all its values are from one source.</summary>
public sealed record BladeItemJson
{
    /// <summary>Designation, unique: width and thickness in mm, and teeth per inch.</summary>
    public required string Designation { get; init; }

    /// <summary>Width of the band in the length unit of the answer.</summary>
    [LengthRange]
    public required decimal Width { get; init; }

    /// <summary>Thickness of the band in the length unit of the answer.</summary>
    [LengthRange]
    public required decimal Thickness { get; init; }

    /// <summary>Width of material that it turns to chips in the length unit of the answer.</summary>
    [LengthRange]
    public required decimal Kerf { get; init; }

    /// <summary>Teeth per inch, the coarsest and the finest.</summary>
    [Range(0.1, 50)]
    public required IReadOnlyList<decimal> TeethPerInch { get; init; }

    /// <summary>Material of the teeth.</summary>
    [KnownValues(typeof(ToothMaterial))]
    public required string ToothMaterial { get; init; }

    /// <summary>Largest capacity of saws on which the band is usual, in the length unit of the answer; absent for the band of the largest saws.</summary>
    [LengthRange]
    public decimal? UpToCapacity { get; init; }

    /// <summary>Publication, table or practice that the values come from.</summary>
    public required string Source { get; init; }

    /// <summary>How far they can be trusted.</summary>
    [KnownValues(typeof(Confidence))]
    public required string Confidence { get; init; }

    /// <summary>A blade of the catalog.</summary>
    public static BladeItemJson Of(CatalogBlade listed, LengthScale scale) => new()
    {
        Designation = listed.Blade.BladeId,
        Width = scale.WriteRounded(listed.Blade.Width),
        Thickness = scale.WriteRounded(listed.Blade.Thickness),
        Kerf = scale.WriteRounded(listed.Blade.Kerf),
        TeethPerInch = [listed.Blade.CoarsestTeethPerInch, listed.Blade.FinestTeethPerInch],
        ToothMaterial = WireEnum.Text(listed.Blade.ToothMaterial),
        UpToCapacity = listed.UpToCapacity is { } capacity ? scale.WriteRounded(capacity) : null,
        Source = DefaultBlades.Source,
        Confidence = WireEnum.Text(Core.Confidence.FromMemory),
    };
}
