using SawEngine.Core.Scheduling.Verification;

namespace SawEngine.Core.Scheduling;

/// <summary>
/// Replays a schedule against every rule, independently of how it was made: it shares no arithmetic with what times, sets up and costs. Any schedule
/// may be asked about, however little sense it makes; the problem is taken to be sound.
/// </summary>
public static class ScheduleVerifier
{
    /// <summary>The rules that the schedule breaks, in the order in which they are found; none where it is clean.</summary>
    public static IReadOnlyList<Violation> Verify(ScheduleProblem problem, Schedule schedule)
    {
        var (index, found) = (new ProblemIndex(problem), new Findings());
        var isSound = new ListCheck(problem, schedule, index, found).Run();
        var listed = Listed(schedule, index, found);
        CheckSaws(problem, listed, index, found);
        new PartsCheck(found).Run(listed);
        new PrecedenceCheck(found).Run(listed, schedule.Jobs);
        // Where a job is unknown, or has no work, there is no cost.
        if (isSound && listed.Count == schedule.Jobs.Count)
            new CostCheck(problem, index, found).Run(schedule, listed);
        if (schedule.BoundMicros > schedule.CostMicros)
            found.Note(ScheduleRule.BoundAboveCost, $"The bound {schedule.BoundMicros} is above the cost {schedule.CostMicros}.");
        return found.All;
    }

    /// <summary>The jobs that can be replayed: known, on a saw that can take them, with work.</summary>
    private static List<ListedJob> Listed(Schedule schedule, ProblemIndex index, Findings found)
    {
        var all = new List<ListedJob>();
        for (var i = 0; i < schedule.Jobs.Count; i++)
        {
            var scheduled = schedule.Jobs[i];
            var job = index.Job(scheduled.JobId);
            var option = job?.Options.FirstOrDefault(option => string.Equals(option.SawId, scheduled.SawId, StringComparison.Ordinal));
            if (index.Saw(scheduled.SawId) is null)
                found.Note(ScheduleRule.UnknownSaw, i, scheduled, "is on a saw that is not in the problem");
            else if (job is not null && option is null)
                found.Note(ScheduleRule.SawNotEligible, i, scheduled, "may not run there");
            else if (scheduled.Work.Count == 0)
                found.Note(ScheduleRule.WorkSteps, i, scheduled, "has no work");
            else if (job is not null)
                all.Add(new(i, scheduled, job, option!));
        }
        return all;
    }

    private static void CheckSaws(ScheduleProblem problem, List<ListedJob> all, ProblemIndex index, Findings found)
    {
        var uses = new List<ResourceUse>();
        var saws = new Dictionary<string, (SawCalendar Calendar, List<ListedJob> Jobs)>(StringComparer.Ordinal);
        foreach (var group in all.GroupBy(listed => listed.Scheduled.SawId, StringComparer.Ordinal))
        {
            var replay = new SawReplay(index.Saw(group.Key)!, index, found);
            var jobs = group.OrderBy(listed => listed.Scheduled.Sequence).ToList();
            foreach (var listed in jobs)
                replay.Run(listed, uses);
            saws.Add(group.Key, (replay.Calendar, jobs));
        }
        new HandsCheck(problem, index, found).Run(uses);
        new CraneCheck(index, found).Run(uses);
        foreach (var team in saws.GroupBy(saw => index.TeamOf(saw.Key)).Where(team => team.Key is not null))
            new AttendanceCheck(found).Run(team.Key!, team.Select(saw => saw.Value));
    }
}
