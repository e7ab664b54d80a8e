using SawEngine.Core.Scheduling;

namespace SawEngine.Core.Tests.Scheduling.ByHand;

/// <summary>What holds of every schedule: jobs, sequences, shifts, set-ups, steps, worn blades, cost.</summary>
internal static class BasicsByHand
{
    public static HandCase Case { get; } = new("basics", HandSchedule.Problem, HandSchedule.Good,
    [
        new("job that is not in the problem", s => s with { Unscheduled = [.. s.Unscheduled, new("J9", "no_saw_for_job")] }, ScheduleRule.UnknownJob),
        new("job without saw and reason", s => s with { Unscheduled = [] }, ScheduleRule.JobMissing),
        new("job that vanished", s => s with { Jobs = [.. s.Jobs.Where(job => job.JobId != "J4")] }, ScheduleRule.JobMissing),
        new("job both scheduled and left out", s => s with { Unscheduled = [new("J4", "no_shift_left"), .. s.Unscheduled] }, ScheduleRule.JobListedTwice),
        new("jobs not by saw", s => s with { Jobs = [.. s.Jobs.Skip(2), .. s.Jobs.Take(2)] }, ScheduleRule.ListOutOfOrder),
        new("saw that is not in the problem", s => s.Change("J3", job => job with { SawId = "S9" }).Change("J4", job => job with { SawId = "S9" }), ScheduleRule.UnknownSaw),
        new("job on a saw that cannot take it", s => s with { Jobs = [.. s.Jobs.Take(2), s.Jobs[3] with { SawId = "S1", Sequence = 3 }, s.Jobs[2]] }, ScheduleRule.SawNotEligible),
        new("sequence with a gap", s => s.Change("J2", job => job with { Sequence = 3 }), ScheduleRule.SequenceBroken),
        new("set-up before the plan", s => s.Change("J3", job => job with { SetUps = [new("gradeGroup", -50, 0), .. job.SetUps.Skip(1)] }), ScheduleRule.StartsBeforePlan, ScheduleRule.SetUpOutsideShift),
        new("job that starts before the one before it ends", s => s.Works("J4", new WorkSpan(2590, 2940, 1)), ScheduleRule.Overlap),
        new("work during the set-up", s => s.Works("J2", new WorkSpan(2150, 2700, 3)), ScheduleRule.Overlap),
        new("section not set up", s => s.SetsUp("J1", new("gradeGroup", 0, 50), new("bladeWorn", 401, 601)), ScheduleRule.SetUpMissing),
        new("blade not set up", s => s.SetsUp("J2"), ScheduleRule.SetUpMissing),
        new("another kind of set-up", s => s.SetsUp("J1", new("gradeGroup", 0, 50), new("blade", 50, 150), new("bladeWorn", 401, 601)), ScheduleRule.SetUpMissing, ScheduleRule.SetUpUnneeded),
        new("set-up that nothing calls for", s => s.SetsUp("J2", new("blade", 2000, 2200), new("section", 2200, 2300)).Works("J2", new WorkSpan(2300, 2850, 3)), ScheduleRule.SetUpUnneeded),
        new("set-up done twice", s => s.SetsUp("J2", new("blade", 2000, 2200), new("blade", 2200, 2400)).Works("J2", new WorkSpan(2400, 2950, 3)), ScheduleRule.SetUpUnneeded),
        new("set-up a second too short", s => s.SetsUp("J1", new("gradeGroup", 0, 50), new("section", 50, 149), new("bladeWorn", 401, 601)), ScheduleRule.SetUpDuration),
        new("set-up a second too long", s => s.SetsUp("J1", new("gradeGroup", 0, 50), new("section", 50, 151), new("bladeWorn", 401, 601)), ScheduleRule.SetUpDuration),
        new("worn blade changed too fast", s => s.SetsUp("J1", new("gradeGroup", 0, 50), new("section", 50, 150), new("bladeWorn", 401, 600)), ScheduleRule.SetUpDuration),
        new("blade before chips", s => s.SetsUp("J3", new("blade", 0, 200), new("gradeGroup", 200, 250), new("section", 250, 350)), ScheduleRule.SetUpOrder),
        new("set-up after the work", s => s.SetsUp("J1", new("gradeGroup", 0, 50), new("bladeWorn", 401, 601), new("section", 802, 902)), ScheduleRule.SetUpOrder),
        new("set-up into the break", s => s.SetsUp("J2", new ScheduledSetUp("blade", 802, 1002)), ScheduleRule.SetUpOutsideShift),
        new("work before its release", s => s.Works("J1", new(199, 400, 2), new(601, 802, 2)), ScheduleRule.WorkBeforeRelease),
        new("work into the break", s => s.Works("J3", new(450, 1050, 2), new(2000, 2600, 2)), ScheduleRule.WorkOutsideShift),
        new("work after the last shift", s => s.Works("J4", new WorkSpan(2651, 3001, 1)), ScheduleRule.WorkOutsideShift),
        new("span a second too short", s => s.Works("J4", new WorkSpan(2600, 2949, 1)), ScheduleRule.WorkDuration),
        new("span a second too long", s => s.Works("J4", new WorkSpan(2600, 2951, 1)), ScheduleRule.WorkDuration),
        new("step left out", s => s.Works("J3", new(350, 950, 2), new(2000, 2300, 1)), ScheduleRule.WorkSteps),
        new("step too many", s => s.Works("J3", new(350, 950, 2), new(2000, 2600, 3)), ScheduleRule.WorkSteps),
        new("job without work", s => s.Works("J4"), ScheduleRule.WorkSteps),
        new("empty span", s => s.Works("J3", new(350, 950, 2), new(2000, 2000, 0), new(2100, 2700, 2)), ScheduleRule.WorkSteps, ScheduleRule.WorkSplit, ScheduleRule.Overlap),
        new("work that stops for nothing", s => s.Works("J2", new(2200, 2350, 1), new(2400, 2800, 2)), ScheduleRule.WorkSplit),
        Mutant.Of("pause of a job that runs through", p => p.Option("J3", option => option with { MayPause = false }), ScheduleRule.WorkPaused),
        new("work not listed by start", s => s.Works("J3", new(2000, 2600, 2), new(350, 950, 2)), ScheduleRule.ListOutOfOrder, ScheduleRule.CostWrong),
        new("worn blade not changed", s => s.SetsUp("J1", new("gradeGroup", 0, 50), new("section", 50, 150)).Works("J1", new WorkSpan(200, 602, 4)), ScheduleRule.BladeWornOut),
        new("worn blade changed a cut too late", s => s.SetsUp("J1", new("gradeGroup", 0, 50), new("section", 50, 150), new("bladeWorn", 502, 702)).Works("J1", new(200, 502, 3), new(702, 803, 1)), ScheduleRule.BladeWornOut),
        new("blade changed a cut too early", s => s.SetsUp("J1", new("gradeGroup", 0, 50), new("section", 50, 150), new("bladeWorn", 301, 501)).Works("J1", new(200, 301, 1), new(501, 803, 3)), ScheduleRule.SetUpUnneeded),
        new("cost a millionth off", s => s with { CostMicros = s.CostMicros - 1 }, ScheduleRule.CostWrong),
        new("bound above the cost", s => s with { BoundMicros = s.CostMicros + 1 }, ScheduleRule.BoundAboveCost),
        new("reason that is not published", s => s with { Unscheduled = [new("J5", "no_idea")] }, ScheduleRule.UnknownReason),
    ]);
}
