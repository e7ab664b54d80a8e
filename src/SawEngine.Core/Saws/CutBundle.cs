namespace SawEngine.Core.Saws;

/// <summary>Equal bars that are clamped and cut together, some side by side along the blade, some on top of one another; the top row of an odd rest may be short.</summary>
/// <param name="Wide">Bars side by side, at least 1.</param>
/// <param name="High">Bars on top of one another, at least 1.</param>
/// <param name="Bars">All bars: <c>Wide × High</c>, or fewer by less than a row.</param>
public readonly record struct CutBundle(int Wide, int High, int Bars)
{
    /// <summary>One bar by itself.</summary>
    public static readonly CutBundle Single = Full(1, 1);

    /// <summary>Whether it is one bar by itself.</summary>
    public bool IsSingle => Bars == 1;

    /// <summary>A bundle whose rows are all full.</summary>
    public static CutBundle Full(int wide, int high) => new(wide, high, wide * high);

    /// <summary>How fewer bars lie, from 1 up: in as few rows as they need, the rows as even as they can be.</summary>
    public CutBundle For(int bars)
    {
        var high = Rows(bars, Wide);
        return new(Rows(bars, high), high, bars);
    }

    /// <summary>The bundles, and how many times each, in which equal bars are cut: full ones first, then what is left.</summary>
    public IReadOnlyList<(CutBundle Bundle, int Times)> Split(int bars)
    {
        var (full, rest) = Math.DivRem(bars, Bars);
        return
        [
            .. full > 0 ? [(this, full)] : Array.Empty<(CutBundle, int)>(),
            .. rest > 0 ? [(For(rest), 1)] : Array.Empty<(CutBundle, int)>(),
        ];
    }

    private static int Rows(int bars, int ofEach) => (bars + ofEach - 1) / ofEach;
}
