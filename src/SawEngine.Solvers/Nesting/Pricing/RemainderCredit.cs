namespace SawEngine.Solvers.Nesting.Pricing;

/// <summary>
/// What is left of a bar is worth something, the less the more pieces are taken: the best point between both. Values rise and credits fall with the cells taken,
/// so a block is worth no more than its last value and its first credit, and most blocks are passed over.
/// </summary>
internal sealed class RemainderCredit
{
    private const int Block = 64;
    private const int BlocksPerSpan = 32;

    private readonly AlikeBars _bars;
    private readonly long _unit;
    private readonly long[] _blocks;

    public RemainderCredit(AlikeBars bars, long unit, int cells)
    {
        _bars = bars;
        _unit = unit;
        _blocks = new long[cells / Block + 1];
        Array.Fill(_blocks, -1);
    }

    /// <summary>The cells at which pieces, scaled by a factor, and credit together are worth most, and the credit there.</summary>
    public (int Cells, long Credit) Best(ReadOnlySpan<int> values, double scale, double factor)
    {
        var (bestCells, bestCredit, best) = (0, Scaled(0, scale), (double)Scaled(0, scale));
        var last = values.Length - 1;
        for (var span = last / (Block * BlocksPerSpan); span >= 0; span--)
        {
            var spanStart = span * Block * BlocksPerSpan;
            if (values[Math.Min(last, spanStart + Block * BlocksPerSpan - 1)] * factor + ScaledBlock(spanStart / Block, scale) <= best)
                continue;
            for (var block = Math.Min(last, spanStart + Block * BlocksPerSpan - 1) / Block; block >= spanStart / Block; block--)
            {
                var end = Math.Min(last, block * Block + Block - 1);
                if (values[end] * factor + ScaledBlock(block, scale) <= best)
                    continue;
                for (var cell = block * Block; cell <= end; cell++)
                {
                    // Only where a value rises can more pieces be worth a smaller remainder.
                    if (cell > 0 && values[cell] == values[cell - 1])
                        continue;
                    var credit = Scaled(cell, scale);
                    if (values[cell] * factor + credit > best)
                        (bestCells, bestCredit, best) = (cell, credit, values[cell] * factor + credit);
                }
            }
        }
        return (bestCells, bestCredit);
    }

    private long Scaled(int cell, double scale) => (long)Math.Ceiling(_bars.MostCredit(cell * _unit) * scale) + 1;

    private long ScaledBlock(int block, double scale)
    {
        if (_blocks[block] < 0)
            _blocks[block] = _bars.MostCredit((long)block * Block * _unit);
        return (long)Math.Ceiling(_blocks[block] * scale) + 1;
    }
}
