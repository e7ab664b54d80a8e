using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>What the source of a standard section prints for it, beside what the engine computes from its dimensions.</summary>
/// <param name="MassAsPrinted">The mass as printed, with its unit.</param>
/// <param name="MassPerMeter">The printed mass of one meter.</param>
/// <param name="Density">The density it was printed for.</param>
/// <param name="Area">The printed area, where there is one.</param>
/// <param name="AreaWall">The wall for which the area was printed, where it is not the nominal one (AISC: design wall, 0.93 nominal).</param>
public sealed record PublishedValues(string MassAsPrinted, Mass MassPerMeter, Density Density, Area? Area, Length? AreaWall);
