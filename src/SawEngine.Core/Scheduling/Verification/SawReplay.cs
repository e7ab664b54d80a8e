using SawEngine.Core.SetUps;

namespace SawEngine.Core.Scheduling.Verification;

/// <summary>Runs one saw's jobs again in their sequence and notes what breaks a rule. It shares no code with what made the schedule.</summary>
internal sealed class SawReplay
{
    private readonly Findings found;
    private readonly SetUpCheck setUps;
    private readonly WorkCheck work;
    private readonly FrozenCheck frozen;
    private long busyUntil = long.MinValue;

    public SawReplay(ScheduleSaw saw, ProblemIndex problem, Findings found)
    {
        this.found = found;
        Calendar = new(saw);
        var blades = new BladeRack(saw);
        setUps = new(saw, blades, found);
        work = new(saw, Calendar, blades, problem, found);
        frozen = new(saw, Calendar, problem, found);
    }

    public SawCalendar Calendar { get; }

    /// <summary>The next job; adds what needs hands to the uses.</summary>
    public void Run(ListedJob listed, List<ResourceUse> uses)
    {
        var scheduled = listed.Scheduled;
        if (scheduled.Work.Zip(scheduled.Work.Skip(1)).Any(pair => pair.First.Start > pair.Second.Start))
            found.Note(ScheduleRule.ListOutOfOrder, listed, "does not list its work by start");
        if (listed.Start < listed.Job.Release && listed.Job.Frozen is null)
            found.Note(ScheduleRule.WorkBeforeRelease, listed, $"starts at {listed.Start}, before its release at {listed.Job.Release}");
        frozen.Run(listed, busyUntil);
        var items = TimedItem.Of(scheduled);
        CheckTimes(listed, items);
        setUps.Run(listed);
        uses.AddRange(scheduled.SetUps.Select(part => new ResourceUse(listed, part.Start, part.Finish, part.OperatorId, CraneId: null, IsCraneLoad: false)));
        work.Run(listed, items, uses);
    }

    // Set-up parts that are done beside the others may start when the saw is free; the others follow one another, and the work follows all.
    private void CheckTimes(ListedJob listed, List<TimedItem> items)
    {
        var (free, following, beside) = (busyUntil, busyUntil, busyUntil);
        foreach (var item in items)
        {
            var isBeside = item.Part is not null && setUps.IsBeside(item.Part);
            var isLeading = item.Part is { Kind: not SetUpRules.BladeWorn };
            var from = isBeside ? free : isLeading ? following : Math.Max(following, beside);
            CheckTimes(listed, item, from);
            if (isBeside)
                beside = Math.Max(beside, item.Finish);
            else
                following = Math.Max(following, item.Finish);
        }
        busyUntil = Math.Max(following, beside);
    }

    private void CheckTimes(ListedJob listed, TimedItem item, long from)
    {
        if (item.Start < 0)
            found.Note(ScheduleRule.StartsBeforePlan, listed, $"has an interval that starts at {item.Start}");
        if (item.Start < from)
            found.Note(ScheduleRule.Overlap, listed, $"has an interval that starts at {item.Start} while the saw is busy until {from}");
        if (item.Part is not null && Calendar.StretchOf(item.Start, item.Finish) == SawCalendar.None)
            found.Note(ScheduleRule.SetUpOutsideShift, listed, $"has an interval {item.Start} to {item.Finish} that lies in no window of the saw");
    }
}
