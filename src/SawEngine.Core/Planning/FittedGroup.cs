using SawEngine.Core.Nesting;
using SawEngine.Core.Orders;

namespace SawEngine.Core.Planning;

/// <summary>Lines of a cutting group together with the saws that can cut every one of them.</summary>
/// <param name="Group">The lines.</param>
/// <param name="Settings">The saws, by id, and on each the grades of bars that it can cut; none where no saw can cut the lines.</param>
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
    /// One group where of the settings that cut all that may be cut from bars of their grade each line has one, else one for each set of settings. Lines that have to lie another way
    /// (a miter in another plane, or beyond the swivel to this side) make groups of their own.
    /// </summary>
    public static IReadOnlyList<FittedGroup> Of(PlanProblem problem, CuttingGroup group)
    {
        var answers = problem.Saws.SelectMany(planSaw => group.Grades.Select(grade => (Grade: grade, Answer: SawSetting.Of(group, grade, planSaw.Saw, problem.Trim)))).ToList();
        var settings = answers.Select(one => one.Answer.Setting).OfType<SawSetting>().ToList();
        var able = group.Lines.ToDictionary(line => line.Ref, line => settings.Where(setting => setting.Cuts(line)).ToList());
        var placeable = group.Lines.Where(line => able[line.Ref].Count > 0).ToList();
        var others = group.Lines.Where(line => able[line.Ref].Count == 0).ToList();
        if (placeable.Count == 0)
            return [new(group, [], others.Select(line => new UnplacedPieces(line.Ref, line.Quantity, Nearest(RefusalsOf(line)))).ToList())];
        var common = settings.Where(setting => placeable.All(line => !CuttingGroup.IsServedBy(line, setting.Grade) || able[line.Ref].Contains(setting))).ToList();
        var groups = placeable.All(line => able[line.Ref].Any(common.Contains))
            ? [new(group.For(placeable), common, [])]
            : placeable.GroupBy(line => string.Join('\n', able[line.Ref].Select(setting => setting.Key)), StringComparer.Ordinal)
                .OrderBy(lines => lines.Key, StringComparer.Ordinal)
                .Select(lines => new FittedGroup(group.For(lines.ToList()), able[lines.First().Ref], []))
                .ToList();
        return others.Count == 0 ? groups : [.. groups, .. Of(problem, group.For(others))];

        IEnumerable<string> RefusalsOf(OrderLine line) =>
            answers.Where(one => CuttingGroup.IsServedBy(line, one.Grade)).Select(one => one.Answer.Refusal ?? one.Answer.Setting!.Refusal(line)!);
    }

    private static string Nearest(IEnumerable<string> refusals) =>
        refusals.MaxBy(refusal => Array.IndexOf(ByNearness, refusal)) ?? UnplacedReason.NoSawHoldsSection;
}
