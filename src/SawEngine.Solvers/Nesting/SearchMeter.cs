namespace SawEngine.Solvers.Nesting;

/// <summary>
/// Counts work so that a search ends after the same work everywhere: cells of tables, and steps of linear programs in cells that take as long.
/// </summary>
internal sealed class SearchMeter(CancellationToken cancellation)
{
    private const long CellsPerPivotAndRow = 600;

    public long Spent { get; private set; }

    public long Limit { get; set; } = long.MaxValue;

    public bool IsCanceled => cancellation.IsCancellationRequested;

    /// <summary>Whether the work is done or the caller has no more time.</summary>
    public bool IsStopped => Spent >= Limit || IsCanceled;

    public void CountCells(long cells) => Spent += cells;

    public void CountPivot(int rows) => Spent += CellsPerPivotAndRow * rows;
}
