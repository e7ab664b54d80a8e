using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Tests.Scheduling;

/// <summary>
/// Small scheduling problems with all that a problem may state. Each feature draws its own numbers, so that a problem with one of them less is else the same.
/// </summary>
internal static class RandomShop
{
    private static readonly string?[] Sections = ["flat", "round", "tube", null];
    private static readonly string?[] GradeGroups = ["alloy", "steel", null];
    private static readonly string?[] Blades = ["B1", "B2", null];
    private static readonly string?[] Angles = ["0", "30", "45", null];

    public static ScheduleProblem Of(int seed, ShopFeatures features = ShopFeatures.All)
    {
        var problem = Base(new(seed));
        foreach (var (feature, add) in Additions)
            if (features.HasFlag(feature))
                problem = add(problem, new(unchecked((seed * 31) + (int)feature)));
        return problem;
    }

    // In this order: what comes later fills what is left, or looks at what is there.
    private static readonly (ShopFeatures Feature, Func<ScheduleProblem, Random, ScheduleProblem> Add)[] Additions =
    [
        (ShopFeatures.Angles, WithAngles),
        (ShopFeatures.Pairs, (problem, random) => EachSaw(problem, saw => saw with { SetUpTimes = WithPairs(saw.SetUpTimes, random) })),
        (ShopFeatures.Beside, (problem, random) => EachSaw(problem, saw => saw with { SetUpTimes = saw.SetUpTimes with { Beside = [.. SetUpRules.Order.Where(_ => random.Next(3) == 0)] } })),
        (ShopFeatures.Overtime, (problem, random) => EachSaw(problem, saw => WithOvertime(saw, random))),
        (ShopFeatures.Unattended, WithUnattended),
        (ShopFeatures.Shelf, (problem, random) => EachSaw(problem, saw => saw with { Shelf = Shelf(random) })),
        (ShopFeatures.Operators, WithOperators),
        (ShopFeatures.Walking, (problem, random) => problem with { WalkingSeconds = random.Next(1, 20) }),
        (ShopFeatures.Cranes, WithCranes),
        (ShopFeatures.Parts, (problem, random) => EachJob(problem, job => random.Next(3) == 0 ? InParts(job, random) : job)),
        (ShopFeatures.Frozen, WithFrozen),
        (ShopFeatures.After, WithAfter),
        (ShopFeatures.Previous, WithPrevious),
        (ShopFeatures.Makespan, (problem, random) => problem with { MakespanCostMicrosPerSecond = random.Next(1, 2000) }),
        (ShopFeatures.SetUpCost, (problem, random) => EachJob(problem, job => job with { Options = [.. job.Options.Select(option => option with { SetUpCostMicrosPerSecond = random.Next(0, 2000) })] })),
    ];

    private static ScheduleProblem Base(Random random)
    {
        var saws = Enumerable.Range(1, random.Next(1, 5)).Select(number => Saw(random, $"S{number}")).ToList();
        var jobs = Enumerable.Range(1, random.Next(1, 13)).Select(number => Job(random, $"J{number:00}", saws)).ToList();
        return new()
        {
            Saws = saws,
            Jobs = jobs,
            Deliveries = [.. Enumerable.Range(1, random.Next(1, jobs.Count + 1)).Select(number => new Delivery(
                $"D{number:00}",
                random.Next(5) == 0 ? null : random.Next(-100, 900),
                random.Next(0, 5_000_000),
                [.. jobs.Where(_ => random.Next(3) == 0).Select(job => job.JobId)]))],
        };
    }

    private static ScheduleSaw Saw(Random random, string id) => new()
    {
        SawId = id,
        Windows = Windows(random, random.Next(1, 6), 40, 400, 120),
        InitialState = SetUp(random),
        SetUpTimes = new(random.Next(0, 30), random.Next(0, 30), random.Next(0, 30)),
        RemainingBladeLife = Life(random),
    };

    private static List<TimeWindow> Windows(Random random, int count, int shortest, int longest, int pause)
    {
        var (at, windows) = (random.Next(2) * random.Next(pause), new List<TimeWindow>());
        for (var i = 0; i < count; i++)
        {
            windows.Add(new(at, at + random.Next(shortest, longest)));
            at = (int)windows[^1].End + random.Next(1, pause);
        }
        return windows;
    }

    private static ScheduleJob Job(Random random, string id, List<ScheduleSaw> saws) => new()
    {
        JobId = id,
        Release = random.Next(2) * random.Next(500),
        Options = [.. saws.Where(_ => random.Next(4) > 0).Select(saw => new JobOption
        {
            SawId = saw.SawId,
            SetUp = SetUp(random),
            Steps = Steps(random),
            MayPause = random.Next(4) > 0,
            CostMicrosPerSecond = random.Next(0, 2000),
        })],
    };

    private static SetUpState SetUp(Random random) => new(OneOf(random, Sections), OneOf(random, GradeGroups), OneOf(random, Blades));

    /// <summary>Bars that are loaded, cut and put away.</summary>
    private static List<StepRun> Steps(Random random)
    {
        var steps = new List<StepRun>();
        var share = random.Next(3) == 0 ? 0 : random.NextInt64(1, 400_000_000);
        for (var bar = random.Next(1, 4); bar > 0; bar--)
        {
            if (random.Next(3) > 0)
                steps.Add(new(random.Next(1, 30_000), 1, 0, StepKind.Load));
            steps.Add(new(random.Next(1, 40_000), random.Next(1, 6), share));
            if (random.Next(3) == 0)
                steps.Add(new(random.Next(1, 20_000), 1, 0, StepKind.Handling));
        }
        return steps;
    }

    private static ScheduleProblem WithAngles(ScheduleProblem problem, Random random) => EachJob(
        EachSaw(problem, saw => saw with
        {
            InitialState = saw.InitialState with { Angle = OneOf(random, Angles) },
            SetUpTimes = saw.SetUpTimes with { Angle = random.Next(0, 30) },
        }),
        job => job with { Options = [.. job.Options.Select(option => option with { SetUp = option.SetUp with { Angle = OneOf(random, Angles) } })] });

    private static SetUpTimes WithPairs(SetUpTimes times, Random random) => times with
    {
        SectionChanges = Pairs(random, Sections),
        GradeGroupChanges = Pairs(random, GradeGroups),
        AngleChanges = Pairs(random, Angles),
    };

    private static SetUpChanges? Pairs(Random random, string?[] names) => random.Next(4) == 0
        ? null
        : new([.. Enumerable.Range(0, random.Next(1, 6)).Select(_ => new SetUpChange(OneOf(random, names), names[random.Next(names.Length - 1)]!, random.Next(0, 60)))]);

    private static ScheduleSaw WithOvertime(ScheduleSaw saw, Random random) => saw with
    {
        Overtime = [.. Gaps(saw.Windows).Where(_ => random.Next(2) == 0).SelectMany(gap => Within(random, gap)).Select(window => new OvertimeWindow(window, random.Next(0, 3000)))],
    };

    private static ScheduleProblem WithUnattended(ScheduleProblem problem, Random random) => EachJob(
        EachSaw(problem, saw => random.Next(4) == 0 ? saw : saw with
        {
            Unattended = new(
                [.. Gaps([.. saw.Windows.Concat(saw.Overtime.Select(overtime => overtime.Window)).OrderBy(window => window.Start)])
                    .Where(_ => random.Next(4) > 0).SelectMany(gap => Within(random, gap))],
                random.Next(0, 4),
                random.Next(0, 10),
                random.Next(2) == 0 ? long.MaxValue : random.Next(1, 300)),
        }),
        job => job with { Options = [.. job.Options.Select(option => option with { MayRunUnattended = random.Next(3) > 0 })] });

    /// <summary>What lies between windows, and some time after the last.</summary>
    private static IEnumerable<TimeWindow> Gaps(IReadOnlyList<TimeWindow> windows)
    {
        var at = 0L;
        foreach (var window in windows)
        {
            if (window.Start > at)
                yield return new(at, window.Start);
            at = window.End;
        }
        yield return new(at, at + 200);
    }

    /// <summary>All of a gap, a part that touches one end or none, or two parts.</summary>
    private static IEnumerable<TimeWindow> Within(Random random, TimeWindow gap)
    {
        if (gap.Seconds < 4 || random.Next(3) == 0)
            return [gap];
        var marks = Enumerable.Range(0, 4).Select(_ => random.NextInt64(gap.Start, gap.End + 1)).Order().ToList();
        marks[0] = random.Next(2) == 0 ? gap.Start : marks[0];
        marks[3] = random.Next(2) == 0 ? gap.End : marks[3];
        return new[] { new TimeWindow(marks[0], marks[1]), new TimeWindow(marks[2], marks[3]) }.Where(window => window.Seconds > 0);
    }

    private static ScheduleProblem WithOperators(ScheduleProblem problem, Random random)
    {
        var operators = new List<ScheduleOperator>();
        foreach (var team in problem.Saws.GroupBy(_ => random.Next(3)).Where(team => team.Key < 2))
        {
            string[] sawIds = [.. team.Select(saw => saw.SawId)];
            for (var i = random.Next(1, 4); i > 0; i--)
                operators.Add(new($"O{operators.Count + 1}", random.Next(2) == 0 ? team.First().Windows : Windows(random, random.Next(1, 5), 60, 600, 80), sawIds, random.Next(1, 4)));
        }
        return problem with { Operators = operators };
    }

    private static ScheduleProblem WithCranes(ScheduleProblem problem, Random random) => EachJob(problem, job => random.Next(2) == 0 ? job : job with
    {
        Options = [.. job.Options.Select(option => option with { Steps = [.. option.Steps.Select(run => run.Kind == StepKind.Load ? run with { Kind = StepKind.CraneLoad } : run)] })],
    }) with
    {
        Cranes = [.. Enumerable.Range(1, random.Next(1, 3)).Select(number => new ScheduleCrane($"C{number}", [.. problem.Saws.Where(_ => random.Next(3) > 0).Select(saw => saw.SawId)]))],
    };

    /// <summary>The same steps on every saw, each at its own pace.</summary>
    private static ScheduleJob InParts(ScheduleJob job, Random random) => job.Options.Count == 0 ? job : job with
    {
        MostParts = random.Next(2, 5),
        Options = [.. job.Options.Select(option => option with { Steps = [.. job.Options[0].Steps.Select(run => run with { Milliseconds = 1 + (run.Milliseconds * random.Next(5, 15) / 10) })] })],
    };

    /// <summary>Some jobs of each saw, one of them running; now and then one that its saw cannot take.</summary>
    private static ScheduleProblem WithFrozen(ScheduleProblem problem, Random random)
    {
        var places = new Dictionary<string, FrozenPlace>();
        foreach (var saw in problem.Saws)
        {
            var start = random.Next(2) == 0 ? -random.NextInt64(100) : random.NextInt64(1, 300);
            foreach (var job in problem.Jobs.Where(job => !places.ContainsKey(job.JobId) && random.Next(4) == 0 && (random.Next(30) == 0 || job.Options.Any(option => option.SawId == saw.SawId))).Take(3).ToList())
            {
                places.Add(job.JobId, new(saw.SawId, start));
                start = Math.Max(1, start + random.NextInt64(0, 200));
            }
        }
        return EachJob(problem, job => places.TryGetValue(job.JobId, out var place) ? job with { Frozen = place, MostParts = 1 } : job);
    }

    /// <summary>Jobs in some order, each after none, one or two of those before it.</summary>
    private static ScheduleProblem WithAfter(ScheduleProblem problem, Random random)
    {
        string[] order = [.. problem.Jobs.Select(job => job.JobId)];
        random.Shuffle(order);
        return EachJob(problem, job => random.Next(2) == 0 ? job : job with
        {
            After = [.. order.TakeWhile(id => id != job.JobId).TakeLast(3).Where(_ => random.Next(2) == 0).Order(StringComparer.Ordinal)],
        });
    }

    private static ScheduleProblem WithPrevious(ScheduleProblem problem, Random random) => problem with
    {
        Previous = new([.. problem.Jobs.Where(_ => random.Next(3) > 0).Select(job => new PreviousPlace(job.JobId, problem.Saws[random.Next(problem.Saws.Count)].SawId, random.NextInt64(0, 800)))])
        {
            CostMicrosPerHourMoved = random.Next(2) * random.NextInt64(5_000_000),
            CostMicrosPerSawChange = random.Next(2) * random.NextInt64(500_000),
        },
    };

    private static List<ShelfBlade> Shelf(Random random) =>
        [.. Enumerable.Range(0, random.Next(5)).Select(_ => new ShelfBlade(Blades[random.Next(2)]!, 1 + (Life(random) / 2))).OrderBy(blade => blade.BladeId, StringComparer.Ordinal).ThenBy(blade => blade.RemainingLife)];

    private static long Life(Random random) => random.NextInt64(0, ScheduleSaw.FullBladeLife + 1);

    private static string? OneOf(Random random, string?[] names) => names[random.Next(names.Length)];

    private static ScheduleProblem EachSaw(ScheduleProblem problem, Func<ScheduleSaw, ScheduleSaw> change) => problem with { Saws = [.. problem.Saws.Select(change)] };

    private static ScheduleProblem EachJob(ScheduleProblem problem, Func<ScheduleJob, ScheduleJob> change) => problem with { Jobs = [.. problem.Jobs.Select(change)] };
}
