using SawEngine.Core.Quantities;

namespace SawEngine.Core.Nesting;

/// <summary>What is left of a bar after its last piece and kerf, the tail included; one physical piece.</summary>
/// <param name="Length">Its length; zero where the last cut runs out of the bar's end.</param>
/// <param name="Kind">Remnant or scrap.</param>
/// <param name="ValueMicros">What it is worth, in millionths of the objective's unit.</param>
public sealed record Remainder(Length Length, RemainderKind Kind, long ValueMicros);
