namespace SawEngine.Core.Scheduling.Explanations;

/// <summary>One change that would make a late delivery less late, all else in its order.</summary>
/// <param name="Kind">The change.</param>
/// <param name="SawId">The saw on which it would run, or which would work longer; null where it stays.</param>
/// <param name="SecondsLate">How late the delivery would still be.</param>
/// <param name="CostChangeMicros">By how much the whole schedule would cost more, lateness included, in millionths of the currency; what the change itself costs (material sooner, hours that no overtime price is stated for) is not in it.</param>
/// <param name="Seconds">Overtime: seconds of set-up and work in it. Null for other kinds.</param>
public sealed record LatenessCure(LatenessCureKind Kind, string? SawId, long SecondsLate, long CostChangeMicros, long? Seconds = null);
