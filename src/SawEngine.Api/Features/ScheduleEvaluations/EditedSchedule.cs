using SawEngine.Api.Features.Schedules;
using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>An edited schedule from wire to trade; the rules have passed.</summary>
internal sealed class EditedSchedule
{
    private readonly ScheduleMapping _mapping;
    private readonly IReadOnlyList<EditedRow> _rowOfJob;

    public EditedSchedule(ScheduleEvaluationRequest request, ScheduleMapping mapping, IScheduleTimer timer)
    {
        _mapping = mapping;
        IsTimed = request.Schedule.Jobs.Any(row => row.Work.Count == 0);
        Rows = new(request.Schedule.Jobs, mapping.Problem, IsTimed);
        var timed = IsTimed ? timer.Time(mapping.Problem, Sequences()) : null;
        NoRoom = timed?.Unscheduled ?? [];
        Jobs = timed?.Jobs ?? [.. Rows.InOrder().Select(Stated)];
        var rows = Rows.InOrder().GroupBy(row => (row.Row.Json.JobId, row.Row.Json.SawId, row.Row.Json.FirstStep - 1), row => row.Row).ToDictionary(alike => alike.Key, alike => new Queue<EditedRow>(alike));
        _rowOfJob = [.. Jobs.Select(job => rows[(job.JobId, job.SawId, job.FirstStep)].Dequeue())];
        Terms = ScheduleCost.Terms(mapping.Problem, Jobs);
        Schedule = new()
        {
            Jobs = Jobs,
            Unscheduled = [.. request.Schedule.Unscheduled.Select(job => new UnscheduledJob(job.JobId, job.Reason)).Concat(NoRoom).OrderBy(job => job.JobId, StringComparer.Ordinal)],
            CostMicros = ScheduleCost.Held(Terms.Total),
            BoundMicros = 0,
            Rule = "edited",
        };
    }

    /// <summary>Its rows.</summary>
    public EditedRows Rows { get; }

    /// <summary>Whether the engine gave the times.</summary>
    public bool IsTimed { get; }

    /// <summary>Jobs for which the engine found no room.</summary>
    public IReadOnlyList<UnscheduledJob> NoRoom { get; }

    /// <summary>The jobs with their times, by saw and sequence.</summary>
    public IReadOnlyList<ScheduledJob> Jobs { get; }

    /// <summary>What they cost.</summary>
    public ScheduleTerms Terms { get; }

    /// <summary>The same as a schedule.</summary>
    public Schedule Schedule { get; }

    /// <summary>The row of one of the jobs, by its place among them.</summary>
    public EditedRow RowOf(int index) => _rowOfJob[index];

    /// <summary>A warning where times are stated that do not count.</summary>
    public IEnumerable<WarningJson> Warnings()
    {
        if (IsTimed && Rows.All.FirstOrDefault(row => row.Json is { Work.Count: > 0 } or { SetUps.Count: > 0 } or { Start: not null } or { Finish: not null }) is { } stated)
        {
            yield return new()
            {
                Code = WarningCode.StatedTimesNotUsed,
                Pointer = stated.Pointer(),
                Detail = "Some jobs have no `work`, so all are timed by the engine in their sequences: the times that are stated here, and maybe elsewhere, count for nothing.",
            };
        }
    }

    private List<GivenSequence> Sequences() =>
    [
        .. Rows.InOrder().Select(row => row.Row.Json).GroupBy(row => row.SawId, StringComparer.Ordinal)
            .Select(onSaw => new GivenSequence(onSaw.Key, [.. onSaw.Select(row => new GivenPart(row.JobId, row.FirstStep - 1, row.Steps))])),
    ];

    private ScheduledJob Stated((EditedRow Row, int Sequence) place)
    {
        var row = place.Row.Json;
        return new()
        {
            JobId = row.JobId,
            SawId = row.SawId,
            Sequence = place.Sequence,
            FirstStep = row.FirstStep - 1,
            SetUps = [.. row.SetUps.Select(SetUp)],
            Work = [.. row.Work.Select(span => new WorkSpan(Second(span.Start), Second(span.Finish), span.Steps, span.OperatorId, span.CraneId))],
        };
    }

    private ScheduledSetUp SetUp(EditedSetUpJson setUp)
    {
        var mounts = setUp.Kind is ScheduledSetUpKind.Blade or ScheduledSetUpKind.BladeWorn;
        var life = mounts ? (long?)decimal.Floor((setUp.MountedLife ?? 1m) * ScheduleSaw.FullBladeLife) : null;
        return new(WireEnum.Text(setUp.Kind), Second(setUp.Start), Second(setUp.Finish), setUp.OperatorId, life);
    }

    private long Second(DateTimeOffset time) => _mapping.Clock.SecondsBefore(time);
}
