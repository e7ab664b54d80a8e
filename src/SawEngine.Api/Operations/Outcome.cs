namespace SawEngine.Api.Operations;

/// <summary>What an operation gives: <see cref="Answered"/> or <see cref="Refused"/>.</summary>
public abstract record Outcome;
