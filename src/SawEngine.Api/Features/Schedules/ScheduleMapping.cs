using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Api.Features.Schedules;

/// <summary>A request for a schedule from wire to trade; the rules have passed.</summary>
/// <param name="Problem">What the scheduler gets.</param>
/// <param name="Clock">Turns its seconds into times.</param>
/// <param name="Defaults">What the engine filled in, by saw and member.</param>
internal sealed record ScheduleMapping(ScheduleProblem Problem, PlanClock Clock, IReadOnlyList<DefaultJson> Defaults)
{
    private const decimal MillisecondsPerSecond = 1000m;

    /// <summary>Everything in canonical order, whatever the order of the request.</summary>
    public static ScheduleMapping Of(ScheduleRequest request)
    {
        var scale = new LengthScale(request.LengthUnit);
        var clock = PlanClock.Of(request.PlanStart, request.TimeZone);
        var saws = request.Shop.ToSaws(scale);
        var shop = new ScheduledShop(request.Shop, saws, clock, section => section);
        var labor = request.Shop.Rates.ToRates().LaborCostPerHour;
        var costs = saws.ToDictionary(saw => saw.Saw.SawId, saw => JobOption.MicrosPerSecond(saw.Saw.MachineCostPerHour + labor), StringComparer.Ordinal);
        var jobs = request.Jobs.OrderBy(job => job.JobId, StringComparer.Ordinal).ToList();
        var problem = new ScheduleProblem
        {
            Saws = shop.Saws,
            Operators = shop.Operators,
            Cranes = shop.Cranes,
            WalkingSeconds = request.Shop.WalkingSeconds,
            Jobs = [.. jobs.Select(job => Job(job, clock, costs))],
            Deliveries = [.. jobs.Select(job => Promise(job, clock))],
        };
        return new(problem, clock, saws.ToDefaults(scale));
    }

    private static ScheduleJob Job(ScheduleJobJson job, PlanClock clock, Dictionary<string, long> costs) => new()
    {
        JobId = job.JobId,
        Release = job.Release is { } release ? Math.Max(0, clock.SecondsAfter(release)) : 0,
        Options = [.. job.Options.OrderBy(option => option.SawId, StringComparer.Ordinal).Select(option => Option(option, costs[option.SawId]))],
    };

    private static JobOption Option(JobOptionJson option, long costMicrosPerSecond) => new()
    {
        SawId = option.SawId,
        SetUp = new SetUpState(option.Section, option.GradeGroup, option.BladeId),
        Steps = Steps(
            (long)decimal.Ceiling(option.Seconds * MillisecondsPerSecond), (long)decimal.Ceiling(option.BladeLifeShare * ScheduleSaw.FullBladeLife), option.Steps),
        CostMicrosPerSecond = costMicrosPerSecond,
    };

    /// <summary>Equal steps to a millisecond and a billionth of a blade: the first ones take what does not divide. There are never more steps than milliseconds.</summary>
    private static List<StepRun> Steps(long milliseconds, long bladeShare, int wanted)
    {
        var count = (int)Math.Min(wanted, milliseconds);
        var (longer, dearer) = ((int)(milliseconds % count), (int)(bladeShare % count));
        int[] ends = [Math.Min(longer, dearer), Math.Max(longer, dearer), count];
        var runs = new List<StepRun>();
        var from = 0;
        foreach (var end in ends.Where(end => end > 0))
        {
            if (end > from)
                runs.Add(new(milliseconds / count + (from < longer ? 1 : 0), end - from, bladeShare / count + (from < dearer ? 1 : 0)));
            from = end;
        }
        return runs;
    }

    private static Delivery Promise(ScheduleJobJson job, PlanClock clock) =>
        new(job.JobId, job.Due is { } due ? clock.SecondsBefore(due) : null, (long)decimal.Floor(job.CostPerHourLate * 1_000_000m), [job.JobId]);
}
