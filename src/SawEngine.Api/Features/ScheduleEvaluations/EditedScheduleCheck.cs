using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>
/// Holds an edited schedule against the verifier and against its own words, and finds where in the request each rule is broken. The verifier says of a violation which
/// job and saw it is about, at the beginning of its sentence.
/// </summary>
internal sealed class EditedScheduleCheck(ScheduleEvaluationRequest request, EditedSchedule edited, ScheduleProblem problem)
{
    private const string JobWord = "Job ";

    /// <summary>No edit states them: they follow from the schedule.</summary>
    private static readonly string[] NotStated = [ScheduleRule.CostWrong, ScheduleRule.BoundAboveCost];

    private readonly ILookup<string, EditedRow> _rows = edited.Rows.All.ToLookup(row => row.Json.JobId, StringComparer.Ordinal);

    private readonly Dictionary<string, int> _asked = request.Jobs.Index().ToDictionary(job => job.Item.JobId, job => job.Index, StringComparer.Ordinal);

    /// <summary>All violations in the order of the rows, then those that are about none.</summary>
    public IReadOnlyList<FoundScheduleViolation> Run()
    {
        var ofRows = edited.Rows.All.Select(row => row.Broken).OfType<FoundScheduleViolation>();
        var broken = edited.Rows.All.Where(row => row.Broken is not null).Select(row => row.Json.JobId).ToHashSet(StringComparer.Ordinal);
        var ofVerifier = ScheduleVerifier.Verify(problem, edited.Schedule)
            .Where(violation => !NotStated.Contains(violation.Code, StringComparer.Ordinal)
                && !(violation.Code is ScheduleRule.JobMissing or ScheduleRule.WorkSteps && SubjectOf(violation.Detail) is { } job && broken.Contains(job)))
            .Select(Placed);
        return [.. ofRows.Concat(edited.IsTimed ? [] : edited.Rows.All.Where(row => row.Broken is null).SelectMany(OfStatements)).Concat(ofVerifier).OrderBy(violation => violation.Place)];
    }

    /// <summary>What a row says of its start, finish and steps beside its work.</summary>
    private static IEnumerable<FoundScheduleViolation> OfStatements(EditedRow row)
    {
        var json = row.Json;
        var steps = json.Work.Sum(span => (long)span.Steps);
        if (json.Start is { } start && start != json.Work[0].Start)
            yield return Found("start", $"Job {json.JobId} states a start that is not that of its first span of work.");
        if (json.Finish is { } finish && finish != json.Work[^1].Finish)
            yield return Found("finish", $"Job {json.JobId} states a finish that is not that of its last span of work.");
        if (json.Steps is { } stated && stated != steps)
            yield return Found("steps", $"Job {json.JobId} states {stated} steps, but has {steps} in its work.");

        FoundScheduleViolation Found(string member, string detail) => new(row.Index, row.Pointer(member), EditedScheduleRule.StatementDiffers, detail);
    }

    private FoundScheduleViolation Placed(Violation violation)
    {
        var job = SubjectOf(violation.Detail);
        var rows = job is null ? [] : _rows[job].ToList();
        if (rows.Find(row => violation.Detail.StartsWith($"{JobWord}{job} on saw {row.Json.SawId} ", StringComparison.Ordinal)) is { } onSaw)
            return Found(onSaw.Index, onSaw.Pointer(MemberOf(violation.Code, onSaw.Json)));
        if (violation.Code == ScheduleRule.JobMissing && job is not null && _asked.TryGetValue(job, out var asked))
            return Found(request.Schedule.Jobs.Count, JsonPointer.Item(JsonPointer.Member(JsonPointer.Root, "jobs"), asked));
        var left = request.Schedule.Unscheduled.Index().FirstOrDefault(row => string.Equals(row.Item.JobId, job, StringComparison.Ordinal));
        if (left.Item is not null)
            return Found(request.Schedule.Jobs.Count, JsonPointer.Item(JsonPointer.Member(JsonPointer.Member(JsonPointer.Root, "schedule"), "unscheduled"), left.Index));
        return rows.Count > 0
            ? Found(rows[0].Index, rows[0].Pointer())
            : Found(request.Schedule.Jobs.Count, JsonPointer.Member(JsonPointer.Member(JsonPointer.Root, "schedule"), "jobs"));

        FoundScheduleViolation Found(int place, string pointer) => new(place, pointer, violation.Code, violation.Detail);
    }

    /// <summary>The job that a sentence begins with; ids may have spaces, so the longest that is known counts.</summary>
    private string? SubjectOf(string detail)
    {
        if (!detail.StartsWith(JobWord, StringComparison.Ordinal))
            return null;
        string? longest = null;
        for (var space = detail.IndexOf(' ', JobWord.Length); space > 0; space = detail.IndexOf(' ', space + 1))
        {
            var id = detail[JobWord.Length..space];
            if (id.Length > Limits.IdLength * 2)
                break;
            if (_asked.ContainsKey(id) || _rows.Contains(id))
                longest = id;
        }
        return longest;
    }

    /// <summary>The member of a row that a rule is about; null where it is the row as a whole, or the edit does not state the member.</summary>
    private static string? MemberOf(string code, EditedJobJson row) => code switch
    {
        ScheduleRule.SequenceBroken => "sequence",
        ScheduleRule.SetUpUnneeded or ScheduleRule.SetUpOrder or ScheduleRule.SetUpDuration or ScheduleRule.SetUpOutsideShift when row.SetUps.Count > 0 => "setUps",
        ScheduleRule.WorkBeforeRelease or ScheduleRule.WorkOutsideShift or ScheduleRule.WorkDuration or ScheduleRule.WorkSteps or ScheduleRule.WorkSplit or ScheduleRule.WorkPaused
            when row.Work.Count > 0 => "work",
        _ => null,
    };
}
