using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>
/// The rows of an edited schedule. What names a job or saw that is not asked for, a saw that cannot take its job, or steps that the job does not have, or has in another
/// row already, is told here; the others are a schedule.
/// </summary>
internal sealed class EditedRows
{
    private readonly Dictionary<string, ScheduleJob> _jobs;
    private readonly HashSet<string> _saws;

    public EditedRows(IReadOnlyList<EditedJobJson> rows, ScheduleProblem problem)
    {
        _jobs = problem.Jobs.ToDictionary(job => job.JobId, StringComparer.Ordinal);
        _saws = [.. problem.Saws.Select(saw => saw.SawId)];
        var taken = new Dictionary<string, List<(long From, long To)>>(StringComparer.Ordinal);
        All = [.. rows.Select((row, i) => new EditedRow(i, row, Broken(i, row, taken)))];
    }

    /// <summary>All rows in the order of the request.</summary>
    public IReadOnlyList<EditedRow> All { get; }

    /// <summary>The rows that are a schedule, by saw and sequence; where some are left out, the places of those behind them close up.</summary>
    public IEnumerable<(EditedRow Row, int Sequence)> InOrder()
    {
        foreach (var onSaw in All.GroupBy(row => row.Json.SawId, StringComparer.Ordinal).OrderBy(onSaw => onSaw.Key, StringComparer.Ordinal))
        {
            var left = 0;
            foreach (var row in onSaw.OrderBy(row => row.Json.Sequence))
            {
                if (row.Broken is null)
                    yield return (row, row.Json.Sequence - left);
                else
                    left++;
            }
        }
    }

    private FoundScheduleViolation? Broken(int index, EditedJobJson row, Dictionary<string, List<(long From, long To)>> taken)
    {
        if (!_jobs.TryGetValue(row.JobId, out var job))
            return Found("jobId", ScheduleRule.UnknownJob, $"{Quoted.Text(row.JobId)} is none of the jobs.");
        if (!_saws.Contains(row.SawId))
            return Found("sawId", ScheduleRule.UnknownSaw, $"{Quoted.Text(row.SawId)} is none of the shop's saws.");
        if (job.Options.FirstOrDefault(option => string.Equals(option.SawId, row.SawId, StringComparison.Ordinal)) is not { } option)
            return Found("sawId", ScheduleRule.SawNotEligible, $"Job {row.JobId} may not run on saw {row.SawId}.");
        var (all, from) = (option.Steps.Sum(run => (long)run.Count), row.FirstStep - 1L);
        var to = row.Work.Count > 0 ? from + row.Work.Sum(span => (long)span.Steps) : row.Steps is { } steps ? from + steps : all;
        if (from >= all || to > all)
            return Found(from >= all ? "firstStep" : row.Work.Count > 0 ? "work" : "steps", ScheduleRule.WorkSteps, $"Job {row.JobId} has {all} steps on saw {row.SawId}; here are steps {from + 1} to {to}.");
        if (!taken.TryGetValue(row.JobId, out var spans))
            taken.Add(row.JobId, spans = []);
        if (spans.Exists(span => from < span.To && span.From < to) || spans.Count == job.MostParts)
            return Found("jobId", ScheduleRule.JobListedTwice, $"Job {row.JobId} stands in the list already with these steps, or in as many parts as it may have.");
        spans.Add((from, to));
        return null;

        FoundScheduleViolation Found(string member, string code, string detail) => new(index, EditedRow.PointerOf(index, member), code, detail);
    }
}
