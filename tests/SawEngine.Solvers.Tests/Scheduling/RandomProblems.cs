using CsCheck;
using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Solvers.Tests.Scheduling;

/// <summary>Problems with everything in them: unlike saws, breaks, release dates, set-ups, worn blades, jobs that may and may not pause.</summary>
internal static class RandomProblems
{
    private static readonly Gen<SetUpState> SetUps = Gen.Select(
        OneOf("flat", "round", null), OneOf("alloy", "steel"), OneOf("B1", "B2", null))
        .Select(state => new SetUpState(state.Item1, state.Item2, state.Item3));

    private static readonly Gen<StepRun> Runs = Gen.Select(
        Gen.Long[1, 40_000], Gen.Int[1, 6], Gen.OneOf(Gen.Const(0L), Gen.Long[1, 400_000_000L]))
        .Select(run => new StepRun(run.Item1, run.Item2, run.Item3));

    private static readonly Gen<TimeWindow[]> Windows = Gen.Select(Gen.Long[0, 60], Gen.Long[20, 400]).Array[0, 8].Select(pairs =>
    {
        var (at, windows) = (-1L, new List<TimeWindow>());
        foreach (var (pause, length) in pairs)
        {
            windows.Add(new(at + 1 + pause, at + 1 + pause + length));
            at = windows[^1].End;
        }
        return windows.ToArray();
    });

    private static Gen<ScheduleSaw> Saw(int saw) => Gen.Select(
        Windows, SetUps, Gen.Select(Gen.Long[0, 30], Gen.Long[0, 30], Gen.Long[0, 30]), Gen.Long[0, ScheduleSaw.FullBladeLife])
        .Select(item => new ScheduleSaw
        {
            SawId = ProblemOf.SawId(saw),
            Windows = item.Item1,
            InitialState = item.Item2,
            SetUpTimes = new(item.Item3.Item1, item.Item3.Item2, item.Item3.Item3),
            RemainingBladeLife = item.Item4,
        });

    private static Gen<JobOption> Option(int saw) => Gen.Select(SetUps, Runs.Array[0, 4], Gen.Bool, Gen.Long[0, 2000])
        .Select(item => new JobOption
        {
            SawId = ProblemOf.SawId(saw),
            SetUp = item.Item1,
            Steps = item.Item2,
            MayPause = item.Item3,
            CostMicrosPerSecond = item.Item4,
        });

    private static Gen<ScheduleJob> Job(int number, int saws) => Gen.Select(
        Gen.OneOf(Gen.Const(0L), Gen.Long[0, 600]), Gen.Select(Option(0), Option(1), Option(2)), Gen.Bool.Array[3])
        .Select(item => new ScheduleJob
        {
            JobId = ProblemOf.Id(number),
            Release = item.Item1,
            Options =
            [
                .. new[] { item.Item2.Item1, item.Item2.Item2, item.Item2.Item3 }.Where((_, saw) => saw < saws && item.Item3[saw]),
            ],
        });

    private static Gen<Delivery> Delivery(int number, int jobs) => Gen.Select(
        Gen.OneOf(Gen.Const((long?)null), Gen.Long[-100, 900].Select(due => (long?)due)), Gen.Long[0, 5_000_000], Gen.Bool.Array[jobs])
        .Select(item => new Delivery(
            $"D{number}",
            item.Item1,
            item.Item2,
            [.. Enumerable.Range(1, jobs).Where(job => item.Item3[job - 1]).Select(ProblemOf.Id)]));

    public static Gen<ScheduleProblem> Of(int maxJobs, int maxSaws) => Gen.Select(Gen.Int[1, maxJobs], Gen.Int[1, maxSaws])
        .SelectMany(size => Gen.Select(
            Gen.Select(Saw(0), Saw(1), Saw(2)),
            Many(size.Item1, number => Job(number, size.Item2)),
            Many(Math.Max(1, size.Item1 * 2 / 3), number => Delivery(number, size.Item1)))
            .Select(item => new ScheduleProblem
            {
                Saws = [.. new[] { item.Item1.Item1, item.Item1.Item2, item.Item1.Item3 }.Take(size.Item2)],
                Jobs = item.Item2,
                Deliveries = item.Item3,
            }));

    /// <summary>The same problems in every run.</summary>
    public static IEnumerable<ScheduleProblem> Take(int count, int maxJobs, int maxSaws)
    {
        var (gen, random) = (Of(maxJobs, maxSaws), new PCG(1, 20_240_229));
        for (var i = 0; i < count; i++)
            yield return gen.Generate(random, null, out _);
    }

    private static Gen<string?> OneOf(params string?[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Gen<T[]> Many<T>(int count, Func<int, Gen<T>> gen)
    {
        var all = Gen.Const(Array.Empty<T>());
        for (var number = 1; number <= count; number++)
        {
            var next = gen(number);
            all = Gen.Select(all, next).Select(pair => (T[])[.. pair.Item1, pair.Item2]);
        }
        return all;
    }
}
