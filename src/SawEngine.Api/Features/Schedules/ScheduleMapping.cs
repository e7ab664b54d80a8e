using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Core.Cautions;
using SawEngine.Core.Quantities;
using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Api.Features.Schedules;

/// <summary>A request for a schedule from wire to trade; the rules have passed. Everything is in canonical order, whatever the order of the request.</summary>
internal sealed class ScheduleMapping
{
    private const decimal Micros = 1_000_000m;

    private readonly ScheduleProblemRequest _request;
    private readonly Materials _materials;
    private readonly Dictionary<string, Money> _costPerHour;

    public ScheduleMapping(ScheduleProblemRequest request)
    {
        _request = request;
        var scale = new LengthScale(request.LengthUnit);
        _materials = new([], request.Grades, scale);
        Clock = PlanClock.Of(request.PlanStart, request.TimeZone);
        var saws = request.Shop.ToSaws(scale);
        Defaults = saws.ToDefaults(scale);
        var labor = request.Shop.Rates.ToRates().LaborCostPerHour;
        _costPerHour = saws.ToDictionary(saw => saw.Saw.SawId, saw => saw.Saw.MachineCostPerHour + labor, StringComparer.Ordinal);
        var shop = new ScheduledShop(request.Shop, saws, Clock, section => section);
        var jobs = request.Jobs.OrderBy(job => job.JobId, StringComparer.Ordinal).ToList();
        Problem = new()
        {
            Saws = [.. shop.Saws.Select(Weighted)],
            Jobs = [.. jobs.Select(Job)],
            Deliveries = [.. jobs.Select(Promise)],
            Operators = shop.Operators,
            Cranes = shop.Cranes,
            WalkingSeconds = request.Shop.WalkingSeconds,
            Previous = Previous(),
            MakespanCostMicrosPerSecond = JobOption.MicrosPerSecond(new(request.MakespanCostPerHour)),
        };
    }

    /// <summary>What the scheduler gets.</summary>
    public ScheduleProblem Problem { get; }

    /// <summary>Turns its seconds into times.</summary>
    public PlanClock Clock { get; }

    /// <summary>What the engine filled in, by saw and member.</summary>
    public IReadOnlyList<DefaultJson> Defaults { get; }

    /// <summary>What the caller should know about the jobs: those overdue, and those that are not run unattended whatever the request says.</summary>
    public IEnumerable<WarningJson> Warnings() => _request.Jobs.OrderBy(job => job.JobId, StringComparer.Ordinal).SelectMany(Warnings);

    private IEnumerable<WarningJson> Warnings(ScheduleJobJson job)
    {
        if (job.Due < _request.PlanStart)
            yield return new() { Code = WarningCode.JobOverdue, JobId = job.JobId, Detail = $"Job {job.JobId} was due before the plan starts." };
        foreach (var option in job.Options.Where(option => option.MayRunUnattended && IsAttendedOnly(option)).OrderBy(option => option.SawId, StringComparer.Ordinal))
        {
            yield return new()
            {
                Code = WarningCode.AttendedOnlyGrade,
                JobId = job.JobId,
                SawId = option.SawId,
                Detail = $"Job {job.JobId} does not run unattended on saw {option.SawId}: grade {Quoted.Text(option.Grade!)} is cut attended only, whatever the request says.",
            };
        }
    }

    private ScheduleSaw Weighted(ScheduleSaw saw) => saw with
    {
        Overtime = [.. saw.Overtime.Select(overtime => overtime with { CostMicrosPerSecond = (long)decimal.Floor(overtime.CostMicrosPerSecond * _request.Weights.Overtime) })],
    };

    private ScheduleJob Job(ScheduleJobJson job) => new()
    {
        JobId = job.JobId,
        Release = job.Release is { } release ? Math.Max(0, Clock.SecondsAfter(release)) : 0,
        Options = [.. job.Options.OrderBy(option => option.SawId, StringComparer.Ordinal).Select(Option)],
        After = [.. job.After.Order(StringComparer.Ordinal)],
        Frozen = job.Frozen is { } frozen ? new(frozen.SawId, Clock.SecondsAfter(frozen.Start)) : null,
        MostParts = job.MostParts,
    };

    private JobOption Option(JobOptionJson option) => new()
    {
        SawId = option.SawId,
        SetUp = new SetUpState(option.Section, option.GradeGroup, option.BladeId, option.AngleDegrees is { } degrees ? AngleText.Of(degrees) : null),
        Steps = JobSteps.Of(option),
        MayPause = option.MayPause,
        MayRunUnattended = option.MayRunUnattended && !IsAttendedOnly(option),
        CostMicrosPerSecond = JobOption.MicrosPerSecond(new(_costPerHour[option.SawId].Amount * _request.Weights.Work)),
        SetUpCostMicrosPerSecond = JobOption.MicrosPerSecond(new(_costPerHour[option.SawId].Amount * _request.Weights.SetUps)),
    };

    private bool IsAttendedOnly(JobOptionJson option) => CautionRules.IsAttendedOnly(_materials.Grade(option.Grade!)!);

    private Delivery Promise(ScheduleJobJson job) =>
        new(job.JobId, job.Due is { } due ? Clock.SecondsBefore(due) : null, (long)decimal.Floor(job.CostPerHourLate * _request.Weights.Tardiness * Micros), [job.JobId]);

    private PreviousSchedule? Previous()
    {
        if (_request.Previous is not { } previous)
            return null;
        var asked = _request.Jobs.Select(job => job.JobId).ToHashSet(StringComparer.Ordinal);
        return new([.. previous.Jobs.Where(job => asked.Contains(job.JobId)).OrderBy(job => job.JobId, StringComparer.Ordinal).Select(job => new PreviousPlace(job.JobId, job.SawId, Math.Max(0, Clock.SecondsBefore(job.Start))))])
        {
            CostMicrosPerHourMoved = (long)(previous.CostPerHourMoved * Micros),
            CostMicrosPerSawChange = (long)(previous.CostPerSawChange * Micros),
        };
    }
}
