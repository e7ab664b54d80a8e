namespace SawEngine.Core.Scheduling;

/// <summary>Jobs that are promised together: done when the last of them is.</summary>
/// <param name="DeliveryId">The sales order.</param>
/// <param name="Due">The promise in seconds since the start of the plan (negative where it is past); null where nothing is promised.</param>
/// <param name="CostMicrosPerHourLate">Cost of an hour late, in millionths of the currency.</param>
/// <param name="JobIds">Its jobs.</param>
public sealed record Delivery(string DeliveryId, long? Due, long CostMicrosPerHourLate, IReadOnlyList<string> JobIds);
