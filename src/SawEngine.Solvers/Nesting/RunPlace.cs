namespace SawEngine.Solvers.Nesting;

/// <summary>Where equal pieces in a row come to lie.</summary>
/// <param name="End">Where the last one ends, in nanometers.</param>
/// <param name="Face">Its last face.</param>
/// <param name="Lays">The lays in which all cuts of the bar can still be made, as bits.</param>
/// <param name="Way">The way in which the first, third and so on lie.</param>
/// <param name="OtherWay">The way in which those between them lie.</param>
internal readonly record struct RunPlace(long End, int Face, int Lays, int Way, int OtherWay);
