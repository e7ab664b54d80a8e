namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>Places of a sequence, both ends included.</summary>
internal readonly record struct Piece(SawSequence Of, int From, int To);
