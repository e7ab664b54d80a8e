using SawEngine.Core.Nesting;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Planning;

/// <summary>Saws for which a group is nested together.</summary>
/// <param name="Settings">How the group lies and is cut on each of them, by saw id.</param>
internal sealed record SawClass(IReadOnlyList<SawSetting> Settings)
{
    /// <summary>Rules under which a layout settings every saw of the class: the largest kerf, tail, shortest piece and slice, the smallest load.</summary>
    public CutRules Envelope => Combine(Length.Max);

    /// <summary>Rules under which whatever settings one saw of the class settings: a bound under these holds for every choice of saw.</summary>
    public CutRules Relaxation => Combine(Length.Min);

    /// <summary>Whether all saws of the class lay a bar alike.</summary>
    public bool IsUniform => Envelope.Kerf == Relaxation.Kerf && Envelope.Tail == Relaxation.Tail && Envelope.ThinnestSlice == Relaxation.ThinnestSlice;

    /// <summary>
    /// The classes worth trying, widest first: all saws, and for each saw those that ask for no more kerf, tail or slice than it does and carry as much.
    /// </summary>
    public static IReadOnlyList<SawClass> Candidates(IReadOnlyList<SawSetting> settings) =>
        settings.Select(setting => settings.Where(other => AsksNoMore(other.Rules, setting.Rules)).ToList())
            .Append(settings.ToList())
            .Select(members => new SawClass(members))
            .GroupBy(candidate => string.Join('\n', candidate.Settings.Select(setting => setting.Saw.SawId)), StringComparer.Ordinal)
            .Select(same => same.First())
            .OrderByDescending(candidate => candidate.Settings.Count).ThenBy(candidate => candidate.Settings[0].Saw.SawId, StringComparer.Ordinal)
            .ToList();

    private static bool AsksNoMore(CutRules rules, CutRules than) =>
        rules.Kerf <= than.Kerf && rules.Tail <= than.Tail && rules.ThinnestSlice <= than.ThinnestSlice && rules.LoadLimit >= than.LoadLimit;

    private CutRules Combine(Func<Length, Length, Length> ofTwo) => new()
    {
        Kerf = Settings.Select(setting => setting.Rules.Kerf).Aggregate(ofTwo),
        Tail = Settings.Select(setting => setting.Rules.Tail).Aggregate(ofTwo),
        ThinnestSlice = Settings.Select(setting => setting.Rules.ThinnestSlice).Aggregate(ofTwo),
        Trim = Settings[0].Rules.Trim,
    };
}
