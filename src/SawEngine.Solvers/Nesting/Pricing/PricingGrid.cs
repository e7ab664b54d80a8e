namespace SawEngine.Solvers.Nesting.Pricing;

/// <summary>
/// Lengths in cells of a table. On the exact grid the cell divides all sizes; a coarser grid rounds sizes up, and rooms down, so that what it packs fits.
/// Rounded the other way it serves for bounds.
/// </summary>
internal sealed class PricingGrid
{
    private PricingGrid(SearchPart part, long unit, bool forBounds)
    {
        Unit = unit;
        Sizes = [.. (forBounds ? part.LeastSizes.Select(size => size / unit) : part.SafeSizes.Select(size => (size + unit - 1) / unit)).Select(cells => (int)cells)];
        Cells = [.. part.Bars.Select(bars => forBounds ? bars.LeastRoom : bars.SafeRoom).Select(room => room < 0 ? -1 : (int)(room / unit))];
    }

    /// <summary>Nanometers of a cell.</summary>
    public long Unit { get; }

    /// <summary>The size of each type.</summary>
    public int[] Sizes { get; }

    /// <summary>The room of each kind of bars; -1 where there is none.</summary>
    public int[] Cells { get; }

    /// <summary>
    /// The exact grid where it has no more cells than some number, else one with half as many, for layouts that fit. A cell is a multiple of what divides all sizes, so
    /// that the unit of length does not matter.
    /// </summary>
    public static PricingGrid ForLayouts(SearchPart part, int mostCells) => new(part, UnitOf(part, mostCells), forBounds: false);

    /// <summary>The same for bounds.</summary>
    public static PricingGrid ForBounds(SearchPart part, int mostCells) => new(part, UnitOf(part, mostCells), forBounds: true);

    public bool IsAs(PricingGrid other) => Unit == other.Unit && Sizes.AsSpan().SequenceEqual(other.Sizes) && Cells.AsSpan().SequenceEqual(other.Cells);

    private static long UnitOf(SearchPart part, int mostCells)
    {
        var divisor = Math.Max(1, part.LeastSizes.Concat(part.SafeSizes).Aggregate(GreatestCommonDivisor));
        var longest = Math.Max(1, part.Bars.Max(bars => Math.Max(bars.LeastRoom, bars.SafeRoom)));
        if (longest / divisor <= mostCells)
            return divisor;
        // Rounded grids need a table each for layouts and bounds: half as many cells take no longer than one that is exact.
        return divisor * ((longest / divisor + mostCells / 2 - 1) / (mostCells / 2));
    }

    private static long GreatestCommonDivisor(long a, long b) => b == 0 ? a : GreatestCommonDivisor(b, a % b);
}
