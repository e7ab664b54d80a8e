namespace SawEngine.Solvers.Nesting.Pricing;

/// <summary>The fill of greatest value of one bar, in scaled units.</summary>
/// <param name="Set">Index of the set of pieces; -1 for none.</param>
/// <param name="Cells">Cells that pieces may take.</param>
/// <param name="Value">Value of pieces and remainder.</param>
/// <param name="Pieces">Value of the pieces, before any factor.</param>
/// <param name="Credit">Value of the remainder.</param>
internal readonly record struct BestFill(int Set, int Cells, long Value, int Pieces, long Credit)
{
    public static readonly BestFill None = new(-1, 0, 0, 0, 0);
}
