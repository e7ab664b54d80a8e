using SawEngine.Core;

namespace SawEngine.Solvers.Nesting.Afterwards;

/// <summary>What an effort means in steps of what comes after the search.</summary>
/// <param name="Gathering">Steps of gathering remnants.</param>
/// <param name="Merging">Steps of merging layouts.</param>
/// <param name="Ordering">Steps of ordering layouts.</param>
internal sealed record AfterwardsEffort(long Gathering, long Merging, long Ordering)
{
    private static readonly AfterwardsEffort Quick = new(1_000, 3_000, 20_000);
    private static readonly AfterwardsEffort Standard = new(50_000, 150_000, 100_000);
    private static readonly AfterwardsEffort Thorough = new(500_000, 10_000_000, 5_000_000);

    public static AfterwardsEffort Of(Effort effort) => effort switch { Effort.Quick => Quick, Effort.Standard => Standard, _ => Thorough };
}
