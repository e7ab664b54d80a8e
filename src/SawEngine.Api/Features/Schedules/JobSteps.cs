using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Schedules;

/// <summary>
/// The steps of a job on one saw: equal ones to a millisecond and a billionth of a blade, of which the first ones take what does not divide, and the loads, each before
/// its share of them. There are never more equal steps than milliseconds.
/// </summary>
internal static class JobSteps
{
    private const decimal MillisecondsPerSecond = 1000m;

    /// <summary>Number of steps, loads among them.</summary>
    public static long Count(JobOptionJson option) => (long)EqualSteps(option) + option.Loads;

    /// <summary>The steps in order.</summary>
    public static IReadOnlyList<StepRun> Of(JobOptionJson option)
    {
        var cuts = Cuts(Milliseconds(option.Seconds), (long)decimal.Ceiling(option.BladeLifeShare * ScheduleSaw.FullBladeLife), EqualSteps(option));
        return option.Loads == 0 ? cuts : WithLoads(cuts, option);
    }

    private static int EqualSteps(JobOptionJson option) => (int)Math.Min(option.Steps, Milliseconds(Math.Clamp(option.Seconds, 0, ScheduleLimits.SecondsOfJob)));

    private static long Milliseconds(decimal seconds) => (long)decimal.Ceiling(seconds * MillisecondsPerSecond);

    private static List<StepRun> Cuts(long milliseconds, long bladeShare, int count)
    {
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

    private static List<StepRun> WithLoads(List<StepRun> cuts, JobOptionJson option)
    {
        var load = new StepRun(Milliseconds(option.LoadSeconds!.Value), 1, 0, option.CraneLoads ? StepKind.CraneLoad : StepKind.Load);
        var count = cuts.Sum(run => (long)run.Count);
        var runs = new List<StepRun>();
        var (run, done) = (0, 0);
        for (var i = 0; i < option.Loads; i++)
        {
            runs.Add(load);
            for (var left = (int)(count * (i + 1) / option.Loads - count * i / option.Loads); left > 0;)
            {
                var taken = Math.Min(left, cuts[run].Count - done);
                runs.Add(cuts[run] with { Count = taken });
                (left, done) = (left - taken, done + taken);
                if (done == cuts[run].Count)
                    (run, done) = (run + 1, 0);
            }
        }
        return runs;
    }
}
