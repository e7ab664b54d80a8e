using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>
/// The rows of an edited schedule. What names a job or saw that is not asked for, or a saw that cannot take its job, is told here, and where the engine is to give the
/// times also steps that the job does not have, or has in another row already; the others are a schedule.
/// </summary>
internal sealed class EditedRows
{
    private readonly Dictionary<string, ScheduleJob> _jobs;
    private readonly HashSet<string> _saws;

    public EditedRows(IReadOnlyList<EditedJobJson> rows, ScheduleProblem problem, bool toBeTimed)
    {
        _jobs = problem.Jobs.ToDictionary(job => job.JobId, StringComparer.Ordinal);
        _saws = [.. problem.Saws.Select(saw => saw.SawId)];
        var taken = new Dictionary<string, List<(long From, long To)>>(StringComparer.Ordinal);
        All = [.. rows.Select((row, i) => new EditedRow(i, row, Unknown(i, row) ?? (toBeTimed ? Doubled(i, row, taken) : null)))];
    }

    /// <summary>All rows in the order of the request.</summary>
    public IReadOnlyList<EditedRow> All { get; }

    /// <summary>The rows that are a schedule, by saw and sequence; where some are left out, the places of those behind them close up.</summary>
    public IEnumerable<(EditedRow Row, int Sequence)> InOrder()
    {
        foreach (var onSaw in All.GroupBy(row => row.Json.SawId, StringComparer.Ordinal).OrderBy(onSaw => onSaw.Key, StringComparer.Ordinal))
        {
            var broken = onSaw.Where(row => row.Broken is not null).Select(row => row.Json.Sequence).ToList();
            foreach (var row in onSaw.Where(row => row.Broken is null).OrderBy(row => row.Json.Sequence))
                yield return (row, row.Json.Sequence - broken.Count(sequence => sequence < row.Json.Sequence));
        }
    }

    private FoundScheduleViolation? Unknown(int index, EditedJobJson row) =>
        !_jobs.TryGetValue(row.JobId, out var job) ? Found(index, "jobId", ScheduleRule.UnknownJob, $"{Quoted.Text(row.JobId)} is none of the jobs.")
        : !_saws.Contains(row.SawId) ? Found(index, "sawId", ScheduleRule.UnknownSaw, $"{Quoted.Text(row.SawId)} is none of the shop's saws.")
        : OptionOf(job, row) is null ? Found(index, "sawId", ScheduleRule.SawNotEligible, $"Job {row.JobId} may not run on saw {row.SawId}.")
        : null;

    private FoundScheduleViolation? Doubled(int index, EditedJobJson row, Dictionary<string, List<(long From, long To)>> taken)
    {
        var job = _jobs[row.JobId];
        var (all, from) = (OptionOf(job, row)!.Steps.Sum(run => (long)run.Count), row.FirstStep - 1L);
        var to = row.Steps is { } steps ? from + steps : all;
        if (from >= Math.Min(to, all) || to > all)
            return Found(index, from >= all ? "firstStep" : "steps", ScheduleRule.WorkSteps, $"Job {row.JobId} has {all} steps on saw {row.SawId}; here {to - from} begin at step {row.FirstStep}.");
        if (!taken.TryGetValue(row.JobId, out var parts))
            taken.Add(row.JobId, parts = []);
        if (parts.Count == job.MostParts || parts.Exists(part => from < part.To && part.From < to))
            return Found(index, "jobId", ScheduleRule.JobListedTwice, $"Job {row.JobId} stands in the list with these steps already, or in as many parts as it may have.");
        parts.Add((from, to));
        return null;
    }

    private static JobOption? OptionOf(ScheduleJob job, EditedJobJson row) => job.Options.FirstOrDefault(option => string.Equals(option.SawId, row.SawId, StringComparison.Ordinal));

    private static FoundScheduleViolation Found(int index, string member, string code, string detail) => new(index, EditedRow.PointerOf(index, member), code, detail);
}
