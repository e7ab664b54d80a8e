using SawEngine.Core.Quantities;

namespace SawEngine.Core.Stock;

/// <summary>A stretch of a bar that gives no pieces.</summary>
/// <param name="From">Its distance from the bar's start.</param>
/// <param name="To">Distance of its end from the bar's start.</param>
/// <param name="Kind">Why.</param>
public readonly record struct BarZone(Length From, Length To, ZoneKind Kind);
