using SawEngine.Core.Quantities;

namespace SawEngine.Core.Nesting.Alternatives;

/// <summary>How far an order may be changed to save a bar.</summary>
/// <param name="ShorterBy">The most by which pieces of a line may be shorter; zero where not at all.</param>
/// <param name="FewerBy">The most by which a line may be fewer; zero where not at all.</param>
/// <param name="OneMoreBar">Whether one more bar of what ran out is looked at.</param>
public sealed record NearMissLimits(Length ShorterBy, int FewerBy, bool OneMoreBar);
