using SawEngine.Core;

namespace SawEngine.Solvers.Nesting;

/// <summary>What an effort means in work.</summary>
/// <param name="Cells">Cells of the longest bar in the tables of the linear program.</param>
/// <param name="GoodEnough">Share of the cost within which a linear program counts as solved.</param>
/// <param name="FirstFillSteps">Steps of exact filling before the linear program.</param>
/// <param name="FillSteps">Steps of exact filling after it.</param>
/// <param name="MoreDives">Dives after the first where one more bar is a large step in cost.</param>
/// <param name="ExactSteps">Steps of searching a part exactly.</param>
/// <param name="GoodGap">Share of the cost that may stay unproved without repacking.</param>
/// <param name="RepackWorkPerType">Work of repacking a part, in cells for each type of its pieces.</param>
/// <param name="VainRepacks">Repacks without success after which no more are tried.</param>
/// <param name="VainRepacksPerBar">The same for each bar of the nest.</param>
/// <param name="RepackSizes">How many bars are taken apart, in turn.</param>
internal sealed record SearchEffort(int Cells, double GoodEnough, long FirstFillSteps, long FillSteps, int MoreDives, long ExactSteps, double GoodGap, long RepackWorkPerType, int VainRepacks, double VainRepacksPerBar, IReadOnlyList<int> RepackSizes)
{
    private static readonly SearchEffort Quick = new(32_768, 1e-3, 1_000_000, 2_000_000, 0, 250_000, 2e-3, 5_000_000, 16, 1.0, [5, 7]);
    private static readonly SearchEffort Standard = new(131_072, 5e-6, 5_000_000, 50_000_000, 6, 10_000_000, 0, 50_000_000, 300, 30, [4, 6, 8]);
    private static readonly SearchEffort Thorough = new(131_072, 5e-6, 20_000_000, 500_000_000, 60, 100_000_000, 0, 400_000_000, 2_000, 100, [4, 6, 8]);

    public static SearchEffort Of(Effort effort) => effort switch { Effort.Quick => Quick, Effort.Standard => Standard, _ => Thorough };
}
