namespace SawEngine.Core.Planning;

/// <summary>Stock that the plan counts on; the caller commits it at once or asks again.</summary>
/// <param name="StockId">The stock item.</param>
/// <param name="Quantity">How many bars of it.</param>
public sealed record Claim(string StockId, int Quantity);
