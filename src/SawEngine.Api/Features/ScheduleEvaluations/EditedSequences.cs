using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>What is wrong with sequences that come without times.</summary>
internal static class EditedSequences
{
    public static IEnumerable<FoundScheduleViolation> Faults(ScheduleProblem problem, EditedRows rows) => Repeated(rows).Concat(AgainstAfter(problem, rows));

    private static IEnumerable<FoundScheduleViolation> Repeated(EditedRows rows) =>
        rows.All.Where(row => row.Broken is null).GroupBy(row => (row.Json.SawId, row.Json.Sequence)).SelectMany(alike => alike.Skip(1).Select(row => Found(
            row,
            EditedScheduleRule.SequenceRepeated,
            $"Saw {row.Json.SawId} has job {alike.First().Json.JobId} at sequence {row.Json.Sequence} too; it goes first here, as it is listed first.")));

    /// <summary>Goes through the sequences of all saws side by side; where each saw waits for a job further on, the first job is out of place.</summary>
    private static IEnumerable<FoundScheduleViolation> AgainstAfter(ScheduleProblem problem, EditedRows rows)
    {
        var after = problem.Jobs.ToDictionary(job => job.JobId, job => job.Frozen is null ? job.After : [], StringComparer.Ordinal);
        var saws = rows.InOrder().Select(one => one.Row).GroupBy(row => row.Json.SawId, StringComparer.Ordinal).Select(onSaw => new Queue<EditedRow>(onSaw)).ToList();
        var left = saws.SelectMany(saw => saw).GroupBy(row => row.Json.JobId, StringComparer.Ordinal).ToDictionary(parts => parts.Key, parts => parts.Count(), StringComparer.Ordinal);
        while (saws.Find(saw => saw.Count > 0) is { } waiting)
        {
            var ready = saws.Find(saw => saw.Count > 0 && Waits(saw.Peek()) is null);
            var row = (ready ?? waiting).Dequeue();
            if (ready is null)
                yield return Found(row, EditedScheduleRule.SequenceAgainstAfter, $"Job {row.Json.JobId} must follow job {Waits(row)}, but the sequences of the saws bring it first.");
            left[row.Json.JobId]--;
        }

        string? Waits(EditedRow row) => after.GetValueOrDefault(row.Json.JobId, []).FirstOrDefault(id => left.GetValueOrDefault(id) > 0);
    }

    private static FoundScheduleViolation Found(EditedRow row, string code, string detail) => new(row.Index, row.Pointer("sequence"), code, detail);
}
