using SawEngine.Core.Nesting;

namespace SawEngine.Core.Planning;

/// <summary>Lines of a cutting group together with the saws that can cut every one of them.</summary>
/// <param name="Group">The lines.</param>
/// <param name="Settings">The saws, by id; none where no saw can cut the lines.</param>
/// <param name="Unplaced">Lines that no saw can cut.</param>
internal sealed record FittedGroup(CuttingGroup Group, IReadOnlyList<SawSetting> Settings, IReadOnlyList<UnplacedPieces> Unplaced)
{
    /// <summary>Refusals from the farthest from cutting to the nearest: a line is told why the saw that comes nearest refuses it.</summary>
    private static readonly string[] ByNearness =
    [
        UnplacedReason.NoSawHoldsSection,
        UnplacedReason.NoSawCutsMiter,
        UnplacedReason.NoBladeCuts,
        UnplacedReason.PieceTooShort,
        UnplacedReason.PieceTooLong,
    ];

    /// <summary>
    /// What each bar costs beside its material: the shop's rate for handling one, and the time of machine and operator to load it and to rack or bin its remainder, on the saw
    /// where that is least; in millionths. A nest of more bars has to save as much material.
    /// </summary>
    public long HandlingMicrosPerBar(ShopRates rates) => Settings.Count == 0 ? 0 : (long)decimal.Floor(1_000_000m * (rates.HandlingCostPerBar.Amount + Settings.Min(setting =>
        (setting.Saw.Times.LoadSecondsPerBar + setting.Saw.Times.RemainderSecondsPerBar) / 3600m * (setting.Saw.MachineCostPerHour.Amount + rates.LaborCostPerHour.Amount))));

    /// <summary>
    /// One group where the saws that can cut its lines have one in common, else one for each set of saws. Lines that have to lie another way
    /// (a miter in another plane, or beyond the swivel to this side) make groups of their own.
    /// </summary>
    public static IReadOnlyList<FittedGroup> Of(PlanProblem problem, CuttingGroup group)
    {
        var answers = problem.Saws.Select(planSaw => SawSetting.Of(group, planSaw.Saw, problem.Trim)).ToList();
        var settings = answers.Select(answer => answer.Setting).OfType<SawSetting>().ToList();
        var able = group.Lines.ToDictionary(line => line.Ref, line => settings.Where(setting => setting.Refusal(line) is null).ToList());
        var placeable = group.Lines.Where(line => able[line.Ref].Count > 0).ToList();
        var others = group.Lines.Where(line => able[line.Ref].Count == 0).ToList();
        if (placeable.Count == 0)
        {
            var refusals = answers.Select(answer => answer.Refusal).OfType<string>().ToList();
            return [new(group, [], others.Select(line => new UnplacedPieces(line.Ref, line.Quantity, Nearest(refusals.Concat(settings.Select(setting => setting.Refusal(line)!))))).ToList())];
        }
        var groups = settings.Any(setting => placeable.All(line => able[line.Ref].Contains(setting)))
            ? [new(group with { Lines = placeable }, settings.Where(setting => placeable.All(line => able[line.Ref].Contains(setting))).ToList(), [])]
            : placeable.GroupBy(line => string.Join('\n', able[line.Ref].Select(setting => setting.Saw.SawId)), StringComparer.Ordinal)
                .OrderBy(lines => lines.Key, StringComparer.Ordinal)
                .Select(lines => new FittedGroup(group with { Lines = lines.ToList() }, able[lines.First().Ref], []))
                .ToList();
        return others.Count == 0 ? groups : [.. groups, .. Of(problem, group with { Lines = others })];
    }

    private static string Nearest(IEnumerable<string> refusals) =>
        refusals.MaxBy(refusal => Array.IndexOf(ByNearness, refusal)) ?? UnplacedReason.NoSawHoldsSection;
}
