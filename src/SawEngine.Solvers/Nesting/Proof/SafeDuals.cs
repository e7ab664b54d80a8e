namespace SawEngine.Solvers.Nesting.Proof;

/// <summary>A bound with the duals that it stands on, in whole millionths.</summary>
/// <param name="Values">What a piece of each type is worth, rounded down.</param>
/// <param name="Gains">What any layout of each kind of bars gives beyond its cost at most; zero for bars that never run out.</param>
/// <param name="Bound">No nest costs less: the worth of all pieces less the gains of all bars.</param>
internal sealed record SafeDuals(long[] Values, long[] Gains, long Bound);
