using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Tests.Scheduling;

/// <summary>What a schedule makes use of: a feature that no schedule uses is not tested.</summary>
internal static class ScheduleUses
{
    /// <summary>All that <see cref="Of"/> knows.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "angle set", "blade worn", "crane named", "crane waited for", "frozen job scheduled", "job after another", "job split", "late", "left out", "operator named",
        "operator waited for", "overtime used", "parts beside", "pause", "running job scheduled", "unattended run", "used blade mounted",
    ];

    /// <summary>The uses of one schedule, each once.</summary>
    public static IEnumerable<string> Of(ScheduleProblem problem, Schedule schedule)
    {
        var jobs = problem.Jobs.ToDictionary(job => job.JobId);
        var saws = problem.Saws.ToDictionary(saw => saw.SawId);
        var manned = problem.Operators.SelectMany(one => one.SawIds).ToHashSet();
        var parts = schedule.Jobs.SelectMany(job => job.SetUps).ToList();
        var pauses = schedule.Jobs.SelectMany(job => job.Work.Zip(job.Work.Skip(1)).Select(pair => (Job: job, Before: pair.First, After: pair.Second))).Where(pause => pause.After.Start > pause.Before.Finish).ToList();
        var all = new (string Name, bool IsUsed)[]
        {
            ("angle set", parts.Exists(part => part.Kind == SetUpRules.Angle)),
            ("blade worn", parts.Exists(part => part.Kind == SetUpRules.BladeWorn)),
            ("crane named", schedule.Jobs.Any(job => job.Work.Any(span => span.CraneId is not null))),
            ("crane waited for", pauses.Exists(pause => pause.After.CraneId is not null && IsInOneShift(pause.Job, pause.Before, pause.After))),
            ("frozen job scheduled", schedule.Jobs.Any(job => jobs[job.JobId].Frozen is not null)),
            ("job after another", schedule.Jobs.Any(job => jobs[job.JobId].After.Count > 0)),
            ("job split", schedule.Jobs.GroupBy(job => job.JobId).Any(job => job.Count() > 1)),
            ("late", ScheduleCost.Terms(problem, schedule.Jobs).Tardiness > 0),
            ("left out", schedule.Unscheduled.Count > 0),
            ("operator named", parts.Exists(part => part.OperatorId is not null)),
            ("operator waited for", pauses.Exists(pause => pause.After.CraneId is null && IsInOneShift(pause.Job, pause.Before, pause.After) && manned.Contains(pause.Job.SawId))),
            ("overtime used", ScheduleCost.Terms(problem, schedule.Jobs).Overtime > 0),
            ("parts beside", schedule.Jobs.Any(job => job.SetUps.Zip(job.SetUps.Skip(1)).Any(pair => pair.Second.Start < pair.First.Finish))),
            ("pause", pauses.Exists(pause => !IsInOneShift(pause.Job, pause.Before, pause.After))),
            ("running job scheduled", schedule.Jobs.Any(job => jobs[job.JobId].Frozen is { Start: <= 0 })),
            ("unattended run", schedule.Jobs.Any(job => job.Work.Any(span => (saws[job.SawId].Unattended?.Windows ?? []).Any(window => span.Start < window.End && window.Start < span.Finish)))),
            ("used blade mounted", parts.Exists(part => part.MountedLife < ScheduleSaw.FullBladeLife)),
        };
        return all.Where(use => use.IsUsed).Select(use => use.Name);

        bool IsInOneShift(ScheduledJob job, WorkSpan before, WorkSpan after) =>
            saws[job.SawId].Windows.Any(window => window.Start <= before.Start && after.Finish <= window.End);
    }
}
