using SawEngine.Core.Quantities;

namespace SawEngine.Core.Saws;

/// <summary>The largest cut bundles that a saw clamps.</summary>
/// <param name="MostWide">Most bars side by side, along the blade.</param>
/// <param name="MostHigh">Most bars on top of one another; more than one need a hold-down.</param>
public sealed record BundleCapacity(int MostWide, int MostHigh)
{
    /// <summary>Largest width of a bundle; null where it is the saw's for single bars.</summary>
    public Length? LargestWidth { get; init; }

    /// <summary>Largest height of a bundle; null where it is the saw's for single bars.</summary>
    public Length? LargestHeight { get; init; }

    /// <summary>Whether the vises press the bars down from above, too.</summary>
    public bool HoldDown { get; init; }

    /// <summary>Most bars in one bundle.</summary>
    public int MostBars => MostWide * MostHigh;
}
