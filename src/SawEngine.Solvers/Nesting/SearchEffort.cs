using SawEngine.Core;

namespace SawEngine.Solvers.Nesting;

/// <summary>What an effort means in work.</summary>
/// <param name="GoodEnough">Share of the cost within which a linear program counts as solved.</param>
/// <param name="FirstFillSteps">Steps of exact filling before the linear program.</param>
/// <param name="FillSteps">Steps of exact filling after it.</param>
/// <param name="RepackWork">Work of repacking a part, in cells.</param>
/// <param name="VainRepacks">Repacks without success after which no more are tried.</param>
/// <param name="RepackSizes">How many bars are taken apart, in turn.</param>
internal sealed record SearchEffort(double GoodEnough, long FirstFillSteps, long FillSteps, long RepackWork, int VainRepacks, IReadOnlyList<int> RepackSizes)
{
    private static readonly SearchEffort Quick = new(1e-3, 1_000_000, 2_000_000, 60_000_000, 10, [5, 7]);
    private static readonly SearchEffort Standard = new(2e-5, 5_000_000, 50_000_000, 400_000_000, 60, [4, 6, 8]);
    private static readonly SearchEffort Thorough = new(1e-6, 20_000_000, 500_000_000, 8_000_000_000, 1_000, [4, 6, 8, 12]);

    public static SearchEffort Of(Effort effort) => effort switch { Effort.Quick => Quick, Effort.Standard => Standard, _ => Thorough };
}
