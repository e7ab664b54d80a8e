namespace SawEngine.Core.Scheduling.Verification;

/// <summary>Whether all that needs hands has those of one operator of its saw's team, who is on shift and busy with nothing else.</summary>
internal sealed class HandsCheck(ScheduleProblem problem, ProblemIndex index, Findings found)
{
    public void Run(IReadOnlyList<ResourceUse> uses)
    {
        var byOperator = new Dictionary<string, List<ResourceUse>>(StringComparer.Ordinal);
        foreach (var use in uses)
        {
            if (!IsNamed(use))
                continue;
            if (!byOperator.TryGetValue(use.OperatorId!, out var own))
                byOperator.Add(use.OperatorId!, own = []);
            own.Add(use);
        }
        foreach (var one in problem.Operators.Where(one => byOperator.ContainsKey(one.OperatorId)))
            CheckOperator(one, byOperator[one.OperatorId]);
    }

    private bool IsNamed(ResourceUse use)
    {
        var team = index.TeamOf(use.Listed.Scheduled.SawId);
        var isOfTeam = team?.Exists(one => string.Equals(one.OperatorId, use.OperatorId, StringComparison.Ordinal)) ?? false;
        if (team is null && use.OperatorId is not null)
            found.Note(ScheduleRule.OperatorUnneeded, use.Listed, $"names the operator {use.OperatorId} at {use.Start}, and its saw has none");
        else if (team is not null && !isOfTeam)
            found.Note(ScheduleRule.OperatorMissing, use.Listed, $"names no operator of its saw for what is done at {use.Start}");
        return isOfTeam;
    }

    private void CheckOperator(ScheduleOperator one, List<ResourceUse> uses)
    {
        var before = (ResourceUse?)null;
        TimeWindow[] windows = [.. one.Windows.OrderBy(window => window.Start)];
        foreach (var use in uses.OrderBy(use => use.Start).ThenBy(use => use.Finish))
        {
            if (SawCalendar.Holding(windows, use.Start, use.Finish) == SawCalendar.None)
                found.Note(ScheduleRule.OperatorOffShift, use.Listed, $"keeps the operator {one.OperatorId} busy from {use.Start} to {use.Finish}, not within a shift");
            if (before is not null && use.Start < FreeFrom(before, use))
                found.Note(ScheduleRule.OperatorBusy, use.Listed, $"needs the operator {one.OperatorId} at {use.Start}, who is not there before {FreeFrom(before, use)}");
            if (before is null || use.Finish >= before.Finish)
                before = use;
        }
    }

    private Int128 FreeFrom(ResourceUse before, ResourceUse use) =>
        before.Finish + (string.Equals(before.Listed.Scheduled.SawId, use.Listed.Scheduled.SawId, StringComparison.Ordinal) ? 0 : (Int128)problem.WalkingSeconds);
}
