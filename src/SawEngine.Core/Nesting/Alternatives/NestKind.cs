namespace SawEngine.Core.Nesting.Alternatives;

/// <summary>What a nest may be best in, other than in cost.</summary>
public enum NestKind
{
    /// <summary>The fewest different layouts, so that stops are set less often.</summary>
    FewestLayouts,

    /// <summary>The fewest bars to fetch and load.</summary>
    FewestBars,

    /// <summary>The most remnants cut up.</summary>
    MostRemnantsUsed,

    /// <summary>The fewest remnants that go back to the rack.</summary>
    FewestNewRemnants,
}
