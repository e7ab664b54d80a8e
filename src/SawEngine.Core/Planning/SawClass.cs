using SawEngine.Core.Grades;
using SawEngine.Core.Nesting;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Planning;

/// <summary>Saws for which a group is nested together.</summary>
/// <param name="Settings">How bars of each grade lie and are cut on each of them, by saw id and grade.</param>
internal sealed record SawClass(IReadOnlyList<SawSetting> Settings)
{
    /// <summary>Rules under which a layout suits every saw of the class: the largest kerf, tail and slice, the smallest load.</summary>
    public CutRules Envelope => Combine(Length.Max, Enumerable.Min);

    /// <summary>Rules that allow whatever suits one saw of the class: a bound under these holds for every choice of saw.</summary>
    public CutRules Relaxation => Combine(Length.Min, Enumerable.Max);

    /// <summary>Names the saws and grades.</summary>
    public string Key => string.Join('\n', Settings.Select(setting => setting.Key));

    /// <summary>Whether bars of a grade are cut on any of the saws.</summary>
    public bool CutsGrade(Grade? grade) => Settings.Any(setting => setting.Grade.Equals(grade));

    /// <summary>Whether all saws of the class lay a bar alike and carry the same bars.</summary>
    public bool IsUniform => AsksNoMore(Envelope, Relaxation);

    /// <summary>
    /// The classes worth trying, widest first: all saws, and for each saw those that ask for no more kerf, tail or slice than it does and carry as much.
    /// </summary>
    public static IReadOnlyList<SawClass> Candidates(IReadOnlyList<SawSetting> settings) =>
        settings.Select(setting => settings.Where(other => AsksNoMore(other.Rules, setting.Rules)).ToList())
            .Append(settings.ToList())
            .Select(members => new SawClass(members))
            .GroupBy(candidate => candidate.Key, StringComparer.Ordinal)
            .Select(same => same.First())
            .OrderByDescending(candidate => candidate.Settings.Count).ThenBy(candidate => candidate.Settings[0].Saw.SawId, StringComparer.Ordinal)
            .ToList();

    private static bool AsksNoMore(CutRules rules, CutRules than) =>
        rules.Kerf <= than.Kerf && rules.Tail <= than.Tail && rules.ThinnestSlice <= than.ThinnestSlice && rules.LoadLimit >= than.LoadLimit;

    private CutRules Combine(Func<Length, Length, Length> ofTwo, Func<IEnumerable<decimal>, decimal> load) => new()
    {
        Kerf = Settings.Select(setting => setting.Rules.Kerf).Aggregate(ofTwo),
        Tail = Settings.Select(setting => setting.Rules.Tail).Aggregate(ofTwo),
        ThinnestSlice = Settings.Select(setting => setting.Rules.ThinnestSlice).Aggregate(ofTwo),
        LoadLimit = new(load(Settings.Select(setting => setting.Saw.LoadLimit.Kilograms))),
        Trim = Settings[0].Rules.Trim,
    };
}
