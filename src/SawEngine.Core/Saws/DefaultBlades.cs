using System.Globalization;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Saws;

/// <summary>Bimetal blades that a saw is taken to have where the shop lists none: one band size by capacity in the ten variable pitches of production bands.</summary>
/// <remarks>Band sizes, kerfs (middle of the usual range) and pitches are from memory; the sizes are typical of ISO 4875-2.</remarks>
public static class DefaultBlades
{
    /// <summary>Where sizes, kerfs and pitches come from.</summary>
    public const string Source = "usual band sizes (typical of ISO 4875-2), kerfs and production pitches; from memory";

    /// <summary>
    /// Band width, thickness and kerf in millimeters, by the largest capacity up to which the band is usual.
    /// Kerfs are whole thousandths of an inch, since they stand in answers, which write them exactly in both units.
    /// </summary>
    private static readonly (decimal UpTo, decimal Width, decimal Thickness, decimal Kerf)[] Bands =
        [(300m, 27m, 0.9m, 1.524m), (450m, 34m, 1.1m, 1.7526m), (650m, 41m, 1.3m, 2.0574m), (decimal.MaxValue, 54m, 1.6m, 2.413m)];

    private static readonly (decimal Coarsest, decimal Finest)[] Pitches =
        [(0.75m, 1.25m), (1m, 1.4m), (1.4m, 2m), (2m, 3m), (3m, 4m), (4m, 6m), (5m, 8m), (6m, 10m), (8m, 12m), (10m, 14m)];

    /// <summary>All usual blades: band by band from the narrowest, of each the coarsest first.</summary>
    public static IReadOnlyList<CatalogBlade> Items { get; } =
        [.. Bands.SelectMany(band => Pitches, (band, pitch) => new CatalogBlade(BladeOf(band.Width, band.Thickness, band.Kerf, pitch), CapacityOf(band.UpTo)))];

    /// <summary>The ten blades, coarsest first.</summary>
    public static IReadOnlyList<Blade> For(SawCapacity capacity) =>
        ByBand[Array.FindIndex(Bands, band => capacity.Largest.Millimeters <= band.UpTo)];

    private static Blade[][] ByBand { get; } = [.. Items.Select(item => item.Blade).Chunk(Pitches.Length)];

    private static Blade BladeOf(decimal width, decimal thickness, decimal kerf, (decimal Coarsest, decimal Finest) pitch) => new()
    {
        BladeId = string.Create(CultureInfo.InvariantCulture, $"{width}x{thickness}-{pitch.Coarsest}/{pitch.Finest}"),
        Width = Length.FromMillimeters(width),
        Thickness = Length.FromMillimeters(thickness),
        Kerf = Length.FromMillimeters(kerf),
        CoarsestTeethPerInch = pitch.Coarsest,
        FinestTeethPerInch = pitch.Finest,
    };

    private static Length? CapacityOf(decimal millimeters) => millimeters == decimal.MaxValue ? null : Length.FromMillimeters(millimeters);
}
