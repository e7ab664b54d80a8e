using SawEngine.Api.Features.Plans;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Writes jobs with their times, the saws' loads and the figures of a schedule, be it the engine's or one that was edited.</summary>
internal sealed class ScheduleRows
{
    private readonly ScheduleProblemRequest _request;
    private readonly ScheduleMapping _mapping;
    private readonly IReadOnlyList<ScheduledJob> _scheduled;
    private readonly Dictionary<string, ScheduleJobJson> _asked;
    private readonly Dictionary<string, ScheduleSaw> _saws;
    private readonly Dictionary<string, (int Parts, long Finish)> _whole;

    public ScheduleRows(ScheduleProblemRequest request, ScheduleMapping mapping, IReadOnlyList<ScheduledJob> scheduled)
    {
        (_request, _mapping, _scheduled) = (request, mapping, scheduled);
        _asked = request.Jobs.ToDictionary(job => job.JobId, StringComparer.Ordinal);
        _saws = mapping.Problem.Saws.ToDictionary(saw => saw.SawId, StringComparer.Ordinal);
        _whole = scheduled.GroupBy(job => job.JobId, StringComparer.Ordinal).ToDictionary(parts => parts.Key, parts => (parts.Count(), parts.Max(part => part.Finish)), StringComparer.Ordinal);
    }

    /// <summary>The jobs, by id and first step.</summary>
    public IReadOnlyList<ScheduledJobJson> Jobs() => [.. _scheduled.OrderBy(job => job.JobId, StringComparer.Ordinal).ThenBy(job => job.FirstStep).Select(Job)];

    /// <summary>The saws that run, by id.</summary>
    public IReadOnlyList<SawLoadJson> Saws() => [.. _scheduled.GroupBy(job => job.SawId, StringComparer.Ordinal).OrderBy(saw => saw.Key, StringComparer.Ordinal).Select(Saw)];

    /// <summary>The figures.</summary>
    public ScheduleTotalsJson Totals()
    {
        var late = _whole.Select(job => HoursLate(job.Key) ?? 0m).ToList();
        return new()
        {
            Jobs = _request.Jobs.Count,
            Scheduled = _whole.Count,
            LateJobs = late.Count(hours => hours > 0),
            LateHours = late.Sum(),
            SplitJobs = _whole.Values.Count(job => job.Parts > 1),
            SetUpSeconds = _scheduled.Sum(ScheduleCost.SetUpSeconds),
            WorkSeconds = _scheduled.Sum(ScheduleCost.WorkSeconds),
            OvertimeSeconds = _scheduled.Sum(OvertimeSeconds),
            UnattendedSeconds = _scheduled.Sum(UnattendedSeconds),
            Finish = _scheduled.Count == 0 ? null : _mapping.Clock.At(_scheduled.Max(job => job.Finish)),
        };
    }

    private ScheduledJobJson Job(ScheduledJob job)
    {
        var asked = _asked[job.JobId];
        return new()
        {
            JobId = job.JobId,
            SawId = job.SawId,
            Sequence = job.Sequence,
            FirstStep = job.FirstStep + 1,
            Steps = job.Work.Sum(span => span.Steps),
            Parts = _whole[job.JobId].Parts,
            SetUps = job.ToSetUps(_mapping.Clock),
            Start = _mapping.Clock.At(job.Start),
            Finish = _mapping.Clock.At(job.Finish),
            Work = job.ToWork(_mapping.Clock, withSteps: true),
            Due = asked.Due is { } due ? _mapping.Clock.InZone(due) : null,
            LateHours = HoursLate(job.JobId),
            Attributes = asked.Attributes,
        };
    }

    private decimal? HoursLate(string jobId) => _asked[jobId].Due is { } due
        ? Math.Round(Math.Max(0, _whole[jobId].Finish - _mapping.Clock.SecondsBefore(due)) / (decimal)ScheduleCost.SecondsPerHour, 4, MidpointRounding.ToEven)
        : null;

    private SawLoadJson Saw(IGrouping<string, ScheduledJob> jobs) => new()
    {
        SawId = jobs.Key,
        JobIds = [.. jobs.OrderBy(job => job.Sequence).Select(job => job.JobId)],
        WorkSeconds = jobs.Sum(ScheduleCost.WorkSeconds),
        SetUpSeconds = jobs.Sum(ScheduleCost.SetUpSeconds),
        OvertimeSeconds = jobs.Sum(OvertimeSeconds),
        UnattendedSeconds = jobs.Sum(UnattendedSeconds),
        Finish = _mapping.Clock.At(jobs.Max(job => job.Finish)),
    };

    private long OvertimeSeconds(ScheduledJob job) => SecondsWithin(job, _saws[job.SawId].Overtime.Select(overtime => overtime.Window));

    private long UnattendedSeconds(ScheduledJob job) => SecondsWithin(job with { SetUps = [] }, _saws[job.SawId].Unattended?.Windows ?? []);

    /// <summary>Seconds in windows are what they would cost at a millionth each.</summary>
    private long SecondsWithin(ScheduledJob job, IEnumerable<TimeWindow> windows) =>
        (long)ScheduleCost.Overtime(_saws[job.SawId] with { Overtime = [.. windows.Select(window => new OvertimeWindow(window, 1))] }, job);
}
