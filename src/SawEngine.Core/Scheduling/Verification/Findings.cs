namespace SawEngine.Core.Scheduling.Verification;

/// <summary>What breaks a rule, in the order in which it is found.</summary>
internal sealed class Findings
{
    private readonly List<Violation> violations = [];

    public IReadOnlyList<Violation> All => violations;

    /// <summary>Of the schedule as a whole.</summary>
    public void Note(string code, string detail) => violations.Add(new(code, detail));

    /// <summary>Of a job, wherever it is.</summary>
    public void Note(string code, string jobId, string detail) => violations.Add(new(code, detail) { JobId = jobId });

    /// <summary>Of a scheduled job; what is wrong with it is said as the rest of a sentence.</summary>
    public void Note(string code, ListedJob listed, string what) => Note(code, listed.Index, listed.Scheduled, what);

    /// <summary>Of a place in the list of scheduled jobs.</summary>
    public void Note(string code, int index, ScheduledJob scheduled, string what) =>
        violations.Add(new(code, $"Job {scheduled.JobId} on saw {scheduled.SawId} {what}.") { JobId = scheduled.JobId, JobIndex = index });
}
