namespace SawEngine.Core.Scheduling.Verification;

/// <summary>Whether each crane load has a crane that reaches its saw, and each crane one load at a time.</summary>
internal sealed class CraneCheck(ProblemIndex index, Findings found)
{
    public void Run(IEnumerable<ResourceUse> uses)
    {
        var loads = uses.Where(use => use.IsCraneLoad).ToLookup(IsNamed);
        foreach (var use in loads[false])
            found.Note(ScheduleRule.CraneMissing, use.Listed, $"names no crane that reaches its saw for the load at {use.Start}");
        foreach (var own in loads[true].GroupBy(use => use.CraneId, StringComparer.Ordinal))
            CheckCrane(own.OrderBy(use => use.Start).ThenBy(use => use.Finish));
    }

    private bool IsNamed(ResourceUse use) => use.CraneId is { } craneId && index.CranesOf(use.Listed.Scheduled.SawId)!.Contains(craneId);

    private void CheckCrane(IEnumerable<ResourceUse> uses)
    {
        var until = long.MinValue;
        foreach (var use in uses)
        {
            if (use.Start < until)
                found.Note(ScheduleRule.CraneBusy, use.Listed, $"needs the crane {use.CraneId} at {use.Start}, which is busy until {until}");
            until = Math.Max(until, use.Finish);
        }
    }
}
