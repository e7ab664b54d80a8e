using SawEngine.Core.Grades;
using SawEngine.Core.Nesting;

namespace SawEngine.Core.Planning;

/// <summary>Bars of one group and one grade that are cut together, before a saw is chosen.</summary>
/// <param name="JobId">Its id.</param>
/// <param name="Nest">The nest that its bars are of.</param>
/// <param name="Bars">The bars, each with its layout id, at positions that fit every saw of the class.</param>
/// <param name="Release">No earlier start, in seconds since the start of the plan.</param>
/// <param name="OnSaw">For each saw that passes the verifier, by saw id, the bars as it cuts them.</param>
internal sealed record JobDraft(
    string JobId,
    GroupNest Nest,
    IReadOnlyList<(string LayoutId, BarLayout Layout)> Bars,
    long Release,
    IReadOnlyDictionary<string, IReadOnlyList<BarWork>> OnSaw)
{
    /// <summary>Grade of its bars, which need not be the one ordered.</summary>
    public Grade Grade => Bars[0].Layout.Stock.Grade!;

    /// <summary>How its bars are cut on each saw that may cut them, by saw id.</summary>
    public IEnumerable<SawSetting> Settings => Nest.SawClass!.Settings.Where(setting => setting.Grade.Equals(Grade) && OnSaw.ContainsKey(setting.Saw.SawId));
}
