using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>Holds an edited schedule against the verifier and against its own words, and finds where in the request each rule is broken.</summary>
internal sealed class EditedScheduleCheck(ScheduleEvaluationRequest request, EditedSchedule edited, ScheduleProblem problem)
{
    /// <summary>No edit states them: they follow from the schedule.</summary>
    private static readonly string[] NotStated = [ScheduleRule.CostWrong, ScheduleRule.BoundAboveCost];

    private static readonly string OfSchedule = JsonPointer.Member(JsonPointer.Root, "schedule");

    /// <summary>All violations in the order of the rows, then those that are about none.</summary>
    public IReadOnlyList<FoundScheduleViolation> Run()
    {
        var broken = edited.Rows.All.Where(row => row.Broken is not null).ToList();
        var withoutPlace = broken.Select(row => row.Json.JobId).ToHashSet(StringComparer.Ordinal);
        var ofVerifier = ScheduleVerifier.Verify(problem, edited.Schedule)
            .Where(violation => !NotStated.Contains(violation.Code, StringComparer.Ordinal)
                && !(violation is { Code: ScheduleRule.JobMissing, JobId: { } job } && withoutPlace.Contains(job)))
            .Select(Placed);
        var ofStatements = edited.IsTimed ? EditedSequences.Faults(problem, edited.Rows) : edited.Rows.All.Where(row => row.Broken is null).SelectMany(OfStatements);
        return [.. broken.Select(row => row.Broken!).Concat(ofStatements).Concat(ofVerifier).OrderBy(violation => violation.Place)];
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
        var row = violation.JobIndex is { } index ? edited.RowOf(index) : edited.Rows.All.FirstOrDefault(row => row.Json.JobId == violation.JobId);
        return row is null
            ? new(request.Schedule.Jobs.Count, PlaceBeside(violation), violation.Code, violation.Detail)
            : new(row.Index, row.Pointer(MemberOf(violation.Code, row.Json)), violation.Code, violation.Detail);
    }

    /// <summary>Where something stands that is about no row: a job that is left out, or missing.</summary>
    private string PlaceBeside(Violation violation)
    {
        var left = request.Schedule.Unscheduled.Index().FirstOrDefault(row => row.Item.JobId == violation.JobId);
        var asked = request.Jobs.Index().FirstOrDefault(job => job.Item.JobId == violation.JobId);
        return left.Item is not null ? JsonPointer.Item(JsonPointer.Member(OfSchedule, "unscheduled"), left.Index)
            : asked.Item is not null ? JsonPointer.Item(JsonPointer.Member(JsonPointer.Root, "jobs"), asked.Index)
            : JsonPointer.Member(OfSchedule, "jobs");
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
