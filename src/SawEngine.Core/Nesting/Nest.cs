namespace SawEngine.Core.Nesting;

/// <summary>All layouts for a nesting problem.</summary>
public sealed record Nest
{
    /// <summary>The layouts in the order in which they are cut, so that few order lines are open at once; no two of one stock item are alike.</summary>
    public required IReadOnlyList<BarLayout> Layouts { get; init; }

    /// <summary>What could not be placed, by line; one row a line.</summary>
    public required IReadOnlyList<UnplacedPieces> Unplaced { get; init; }

    /// <summary>Cost of the layouts (see <see cref="LayoutCost"/>), in millionths of the objective's unit.</summary>
    public required long ValueMicros { get; init; }

    /// <summary>No nest that places the same pieces costs less than this.</summary>
    public required long BoundMicros { get; init; }

    /// <summary>What ended the search.</summary>
    public required StoppedBy StoppedBy { get; init; }

    /// <summary>The greatest number of order lines open at once (see <see cref="OpenLines"/>).</summary>
    public int MostOpenLines => OpenLines.Most(Layouts);

    /// <summary>Share of the value that is not proved: (value - bound) / value; 0 where the value is not positive.</summary>
    public decimal Gap => ValueMicros > 0 && BoundMicros < ValueMicros ? (ValueMicros - BoundMicros) / (decimal)ValueMicros : 0m;
}
