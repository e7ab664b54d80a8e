using SawEngine.Core.Scheduling;
using SawEngine.Core.Tests.Scheduling.ByHand;
using SawEngine.Tests.Scheduling;

namespace SawEngine.Core.Tests.Scheduling;

/// <summary>Callers edit schedules: whatever they hand in gets its violations, each with a job that is there.</summary>
public class NonsenseScheduleTests
{
    private static readonly long[] Extremes = [long.MinValue, long.MinValue + 1, -1, 0, 1, long.MaxValue - 1, long.MaxValue];
    private static readonly string[] Kinds = ["section", "gradeGroup", "blade", "angle", "bladeWorn", "nonsense", ""];

    [Fact]
    public void Nonsense_is_answered_with_violations()
    {
        for (var seed = 0; seed < 2_000; seed++)
        {
            var problem = RandomShop.Of(seed);
            var schedule = Nonsense(new(seed), problem);
            var found = ScheduleVerifier.Verify(problem, schedule);
            Assert.NotEmpty(found);
            Assert.All(found.Where(violation => violation.JobIndex is not null), violation => Assert.Equal(schedule.Jobs[violation.JobIndex!.Value].JobId, violation.JobId));
        }
    }

    /// <summary>One number of a clean schedule at a time, so that what comes after it makes sense and is looked at.</summary>
    [Fact]
    public void One_number_that_makes_no_sense_is_answered_with_violations()
    {
        for (var seed = 0; seed < 2_000; seed++)
        {
            var (random, one) = (new Random(seed), HandCase.All[seed % HandCase.All.Count]);
            var jobs = one.Good.Jobs.ToArray();
            ref var job = ref jobs[random.Next(jobs.Length)];
            job = Spoiled(random, job);
            Assert.NotEmpty(ScheduleVerifier.Verify(one.Problem, one.Good with { Jobs = jobs }));
        }
    }

    private static ScheduledJob Spoiled(Random random, ScheduledJob job)
    {
        var extreme = random.Next(2) == 0 ? long.MinValue : long.MaxValue;
        var (setUps, work) = (job.SetUps.ToArray(), job.Work.ToArray());
        switch (random.Next(setUps.Length > 0 ? 7 : 5))
        {
            case 0:
                return job with { Sequence = (int)Math.Clamp(extreme, int.MinValue, int.MaxValue) };
            case 1:
                return job with { FirstStep = (int)Math.Clamp(extreme, int.MinValue, int.MaxValue) };
            case 2:
                Spoil(work, span => span with { Start = extreme });
                break;
            case 3:
                Spoil(work, span => span with { Finish = extreme });
                break;
            case 4:
                Spoil(work, span => span with { Steps = (int)Math.Clamp(extreme, int.MinValue, int.MaxValue) });
                break;
            case 5:
                Spoil(setUps, part => part with { Start = extreme });
                break;
            default:
                Spoil(setUps, part => part with { Finish = extreme, MountedLife = part.MountedLife is null ? null : extreme });
                break;
        }
        return job with { SetUps = setUps, Work = work };

        void Spoil<T>(T[] items, Func<T, T> change)
        {
            ref var item = ref items[random.Next(items.Length)];
            item = change(item);
        }
    }

    private static Schedule Nonsense(Random random, ScheduleProblem problem)
    {
        string[] ids = [.. problem.Jobs.Select(job => job.JobId), "J99", ""];
        string[] sawIds = [.. problem.Saws.Select(saw => saw.SawId), "S99"];
        string[] names = [.. problem.Operators.Select(one => one.OperatorId), .. problem.Cranes.Select(crane => crane.CraneId), "nobody"];
        return new()
        {
            Jobs = [.. Many(random, 15, () => new ScheduledJob
            {
                JobId = OneOf(random, ids),
                SawId = OneOf(random, sawIds),
                Sequence = (int)Math.Clamp(Number(random), int.MinValue, int.MaxValue),
                FirstStep = random.Next(2) == 0 ? 0 : (int)Math.Clamp(Number(random), int.MinValue, int.MaxValue),
                SetUps = [.. Many(random, 6, () => new ScheduledSetUp(OneOf(random, Kinds), Number(random), Number(random), Name(random, names), random.Next(2) == 0 ? null : Number(random)))],
                Work = [.. Many(random, 6, () => new WorkSpan(Number(random), Number(random), (int)Math.Clamp(Number(random), int.MinValue, int.MaxValue), Name(random, names), Name(random, names)))],
            })],
            Unscheduled = [.. Many(random, 4, () => new UnscheduledJob(OneOf(random, ids), OneOf(random, ["no_saw_for_job", "predecessor_unscheduled", "nonsense", ""])))],
            CostMicros = Number(random),
            BoundMicros = Number(random),
            Rule = "",
        };
    }

    private static long Number(Random random) => random.Next(4) switch
    {
        0 => Extremes[random.Next(Extremes.Length)],
        1 => random.NextInt64(),
        _ => random.NextInt64(-50, 1500),
    };

    private static IEnumerable<T> Many<T>(Random random, int most, Func<T> make) => Enumerable.Range(0, random.Next(most + 1)).Select(_ => make());

    private static string OneOf(Random random, string[] names) => names[random.Next(names.Length)];

    private static string? Name(Random random, string[] names) => random.Next(2) == 0 ? null : OneOf(random, names);
}
