using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Benchmarks.Quality;

/// <summary>
/// Days of an invented saw shop: unlike saws in two shifts with breaks, downtimes and Saturday overtime, blades that wear out, families of sections and grades,
/// two operators for three saws a shift with breaks of their own, one crane, one saw in three that may run on by itself.
/// All figures are invented; the load is such that some promises cannot be kept.
/// </summary>
internal static class ShopDays
{
    public const string SetName = "shop_days";

    /// <summary>Jobs and saws.</summary>
    public static readonly IReadOnlyList<(int Jobs, int Saws)> Sizes = [(60, 3), (150, 5), (400, 8)];

    private const int Days = 28;
    private const long SecondsPerDay = 86_400;
    private const int SecondsPerHour = 3600;
    private const int DayOff = 5; // the plan starts on a Monday
    private const long MicrosPerSecondOfOvertime = 12_000;
    private static readonly string[] GradeGroups = ["carbon", "alloy", "stainless", "aluminum"];

    /// <summary>One problem.</summary>
    public static ScheduleProblem Of((int Jobs, int Saws) size, int seed)
    {
        var random = SplitMix.Of($"{SetName} {size.Jobs} {size.Saws}", seed);
        var saws = Enumerable.Range(0, size.Saws).Select(saw => Saw(saw, random)).ToList();
        var jobs = Enumerable.Range(0, size.Jobs).Select(job => Job(job, size.Saws, random)).ToList();
        return new()
        {
            Saws = saws,
            Jobs = jobs,
            Deliveries = [.. Deliveries(jobs, saws, random)],
            Operators = [.. Operators(saws)],
            Cranes = [new("crane", [.. saws.Select(saw => saw.SawId)])],
            WalkingSeconds = 60,
        };
    }

    private static string SawId(int saw) => $"S{saw + 1:00}";

    private static ScheduleSaw Saw(int saw, SplitMix random)
    {
        var windows = Shifts([(6.0, 9.25), (9.5, 14.0), (14.0, 18.25), (18.5, 22.0)]);
        var down = random.Between(0, 40) * SecondsPerHour;
        return new()
        {
            SawId = SawId(saw),
            Windows = Without(windows, new(down, down + (random.Between(1, 4) * SecondsPerHour))),
            Overtime = [.. Enumerable.Range(0, Days).Where(day => day % 7 == DayOff).Select(day => new OvertimeWindow(Window(day, 6.0, 12.0), MicrosPerSecondOfOvertime))],
            Unattended = saw % 3 == 2 ? new([.. Enumerable.Range(0, Days - 1).Where(day => day % 7 < DayOff).Select(day => Window(day, 22.0, 30.0))], 6, 80) : null,
            InitialState = new(null, null, $"blade {random.Between(1, 3)}"),
            SetUpTimes = new(random.Between(6, 12) * 60, random.Between(4, 8) * 60, random.Between(12, 18) * 60)
            {
                GradeGroupChanges = new([new("carbon", "stainless", 900), new("carbon", "aluminum", 900), new("alloy", "stainless", 900)]),
                Beside = saw % 2 == 0 ? [SetUpRules.GradeGroup] : [],
            },
            RemainingBladeLife = random.Between(10, 100) * (ScheduleSaw.FullBladeLife / 100),
            Shelf = [new($"blade {random.Between(1, 3)}", random.Between(20, 60) * (ScheduleSaw.FullBladeLife / 100))],
        };
    }

    private static ScheduleJob Job(int number, int saws, SplitMix random)
    {
        var (family, group) = (random.Between(0, 11), random.Of(GradeGroups));
        var (cuts, bars) = (random.Between(4, 60), random.Between(1, 6));
        var cutSeconds = random.Between(20, 150);
        var share = random.Between(2, 12) * (ScheduleSaw.FullBladeLife / 1000) * cutSeconds / 60;
        var isHeavy = family >= 8;
        var first = random.Between(0, saws - 1);
        var eligible = Enumerable.Range(0, saws).Where(saw => saw == first || (random.Percent(60) && (!isHeavy || saw % 2 == first % 2))).ToList();
        return new()
        {
            JobId = $"J{number + 1:000}",
            Release = random.Percent(75) ? 0 : random.Between(1, 24) * SecondsPerHour,
            Options =
            [
                .. eligible.Select(saw =>
                {
                    var milliseconds = cutSeconds * 1000L * random.Between(80, 130) / 100;
                    return new JobOption
                    {
                        SawId = SawId(saw),
                        SetUp = new($"section {family}", group, $"blade {(family % 3) + 1}"),
                        Steps = Steps(bars, cuts, milliseconds, share, isHeavy),
                        MayRunUnattended = group != "stainless",
                        CostMicrosPerSecond = (15 + (5 * (saw % 4))) * 1000,
                    };
                }),
            ],
        };
    }

    private static List<StepRun> Steps(int bars, int cuts, long milliseconds, long share, bool isHeavy)
    {
        var steps = new List<StepRun>();
        for (var bar = 0; bar < bars; bar++)
        {
            steps.Add(new(isHeavy ? 300_000 : 120_000, 1, 0, isHeavy ? StepKind.CraneLoad : StepKind.Load));
            steps.Add(new(milliseconds, Math.Max(1, cuts / bars), share));
            steps.Add(new(45_000, 1, 0, StepKind.Handling));
        }
        return steps;
    }

    // Promises are spread over the time that the work of all takes, a little beyond it and a little before.
    private static IEnumerable<Delivery> Deliveries(List<ScheduleJob> jobs, List<ScheduleSaw> saws, SplitMix random)
    {
        var work = jobs.Sum(job => job.Options.Min(option => option.WorkMilliseconds) / 1000);
        var span = work * 5 / 2 / saws.Count;
        foreach (var job in jobs)
        {
            var due = (long)(span * (0.15 + (1.1 * random.Unit())));
            yield return new(job.JobId, Math.Max(due, job.Release + (2 * SecondsPerHour)), random.Between(5, 60) * 1_000_000L, [job.JobId]);
        }
    }

    /// <summary>Cells of three saws have two operators a shift, what is left over one for each saw; breaks are taken one after the other.</summary>
    private static IEnumerable<ScheduleOperator> Operators(List<ScheduleSaw> saws)
    {
        foreach (var cell in saws.Chunk(3))
        {
            var ids = cell.Select(saw => saw.SawId).ToList();
            for (var one = 0; one < Math.Min(2, ids.Count); one++)
            {
                var late = one * 0.25;
                yield return new($"{ids[0]} early {one + 1}", WithOvertime(Shifts([(6.0, 9.0 + late), (9.25 + late, 14.0)])), ids, 2);
                yield return new($"{ids[0]} late {one + 1}", Shifts([(14.0, 18.0 + late), (18.25 + late, 22.0)]), ids, 2);
            }
        }
    }

    private static List<TimeWindow> WithOvertime(List<TimeWindow> windows) =>
        [.. windows.Concat(Enumerable.Range(0, Days).Where(day => day % 7 == DayOff).Select(day => Window(day, 6.0, 12.0))).OrderBy(window => window.Start)];

    private static List<TimeWindow> Shifts(IReadOnlyList<(double From, double To)> hours)
    {
        var windows = new List<TimeWindow>();
        foreach (var day in Enumerable.Range(0, Days).Where(day => day % 7 < DayOff))
            foreach (var window in hours.Select(span => Window(day, span.From, span.To)))
            {
                if (windows.Count > 0 && windows[^1].End == window.Start)
                    windows[^1] = windows[^1] with { End = window.End };
                else
                    windows.Add(window);
            }
        return windows;
    }

    /// <summary>Hours after the start of the plan at six in the morning of a day.</summary>
    private static TimeWindow Window(int day, double from, double to) =>
        new((day * SecondsPerDay) + (long)((from - 6) * SecondsPerHour), (day * SecondsPerDay) + (long)((to - 6) * SecondsPerHour));

    private static List<TimeWindow> Without(List<TimeWindow> windows, TimeWindow hole) =>
    [
        .. windows.SelectMany(window => new TimeWindow[]
        {
            new(window.Start, Math.Min(window.End, Math.Max(window.Start, hole.Start))),
            new(Math.Max(window.Start, Math.Min(window.End, hole.End)), window.End),
        }.Where(part => part.Seconds > 0)).Distinct(),
    ];
}
