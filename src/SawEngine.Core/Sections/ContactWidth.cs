using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>How much material the blade is in at a depth of a custom section. Between two depths the width changes in a straight line; two at one depth make a step.</summary>
/// <param name="Depth">Depth below the top.</param>
/// <param name="Width">All material that the blade is in there.</param>
/// <param name="Runs">How many equal runs that is, from this depth down to the next.</param>
public readonly record struct ContactWidth(Length Depth, Length Width, int Runs = 1);
