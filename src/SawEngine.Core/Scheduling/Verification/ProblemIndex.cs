namespace SawEngine.Core.Scheduling.Verification;

/// <summary>What a problem says of each job and saw, by id.</summary>
internal sealed class ProblemIndex
{
    private readonly Dictionary<string, ScheduleJob> jobs = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ScheduleSaw> saws = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<ScheduleOperator>> teams = new(StringComparer.Ordinal);
    private readonly Dictionary<string, HashSet<string>> cranes = new(StringComparer.Ordinal);

    public ProblemIndex(ScheduleProblem problem)
    {
        foreach (var job in problem.Jobs)
            jobs.TryAdd(job.JobId, job);
        foreach (var saw in problem.Saws)
            saws.TryAdd(saw.SawId, saw);
        foreach (var one in problem.Operators)
            Join(one);
        foreach (var crane in problem.Cranes)
            foreach (var sawId in crane.SawIds)
                Cranes(sawId).Add(crane.CraneId);
    }

    public ScheduleJob? Job(string jobId) => jobs.GetValueOrDefault(jobId);

    public ScheduleSaw? Saw(string sawId) => saws.GetValueOrDefault(sawId);

    /// <summary>The operators who attend a saw; the same list for all saws of a team, null where there is none.</summary>
    public List<ScheduleOperator>? TeamOf(string sawId) => teams.GetValueOrDefault(sawId);

    /// <summary>The cranes that reach a saw; null where there is none.</summary>
    public IReadOnlySet<string>? CranesOf(string sawId) => cranes.GetValueOrDefault(sawId);

    private void Join(ScheduleOperator one)
    {
        var team = one.SawIds.Select(TeamOf).FirstOrDefault(team => team is not null) ?? [];
        team.Add(one);
        foreach (var sawId in one.SawIds)
            teams.TryAdd(sawId, team);
    }

    private HashSet<string> Cranes(string sawId)
    {
        if (!cranes.TryGetValue(sawId, out var reaching))
            cranes.Add(sawId, reaching = new(StringComparer.Ordinal));
        return reaching;
    }
}
