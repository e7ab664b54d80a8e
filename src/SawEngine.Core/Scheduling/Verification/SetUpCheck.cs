using SawEngine.Core.SetUps;

namespace SawEngine.Core.Scheduling.Verification;

/// <summary>What one saw is set up for, job after job, and whether the set-up parts before each job are those that it needs.</summary>
internal sealed class SetUpCheck(ScheduleSaw saw, BladeRack blades, Findings found)
{
    private readonly ChangeTimes sections = new(saw.SetUpTimes.Section, saw.SetUpTimes.SectionChanges);
    private readonly ChangeTimes gradeGroups = new(saw.SetUpTimes.GradeGroup, saw.SetUpTimes.GradeGroupChanges);
    private readonly ChangeTimes angles = new(saw.SetUpTimes.Angle, saw.SetUpTimes.AngleChanges);
    private readonly ChangeTimes bladeTimes = new(saw.SetUpTimes.Blade);
    private string? section = saw.InitialState.Section;
    private string? gradeGroup = saw.InitialState.GradeGroup;
    private string? angle = saw.InitialState.Angle;

    /// <summary>Whether a part may be done at the same time as the others of its job.</summary>
    public bool IsBeside(ScheduledSetUp part) => part.Kind != SetUpRules.BladeWorn && saw.SetUpTimes.Beside.Contains(part.Kind);

    /// <summary>Checks the parts before the work of a job, worn blades apart, and leaves the saw set up for it.</summary>
    public void Run(ListedJob listed)
    {
        var to = listed.Option.SetUp;
        var needed = listed.IsRunning ? [] : Needed(to);
        var parts = listed.Scheduled.SetUps.Where(part => part.Kind != SetUpRules.BladeWorn).ToList();
        CheckNeeded(listed, needed, parts);
        CheckUnneeded(listed, needed, parts);
        if (!InOrder(listed, needed.ConvertAll(part => part.Kind)))
            found.Note(ScheduleRule.SetUpOrder, listed, $"has its set-up parts in the order {string.Join(", ", listed.Scheduled.SetUps.Select(part => part.Kind))}");
        if (listed.IsRunning)
            blades.Know(to.BladeId ?? blades.BladeId);
        else if (bladeTimes.Seconds(blades.BladeId, to.BladeId) is not null)
            Mount(listed, to.BladeId!, parts.Find(part => part.Kind == SetUpRules.Blade));
        (section, gradeGroup, angle) = (to.Section ?? section, to.GradeGroup ?? gradeGroup, to.Angle ?? angle);
    }

    private void CheckNeeded(ListedJob listed, List<(string Kind, long Seconds)> needed, List<ScheduledSetUp> parts)
    {
        foreach (var (kind, seconds) in needed)
        {
            var part = parts.Find(part => part.Kind == kind);
            if (part is null && seconds > 0)
                found.Note(ScheduleRule.SetUpMissing, listed, $"needs the set-up {kind}");
            else if (part is not null && (Int128)part.Finish - part.Start != seconds)
                found.Note(ScheduleRule.SetUpDuration, listed, $"has {(Int128)part.Finish - part.Start} s of set-up {kind} where {seconds} are due");
        }
    }

    private void CheckUnneeded(ListedJob listed, List<(string Kind, long Seconds)> needed, List<ScheduledSetUp> parts)
    {
        var due = needed.Select(part => part.Kind).ToHashSet(StringComparer.Ordinal);
        foreach (var part in parts)
        {
            if (!due.Remove(part.Kind))
                found.Note(ScheduleRule.SetUpUnneeded, listed, $"has a set-up {part.Kind} that nothing calls for");
            if (part.MountedLife is not null && part.Kind != SetUpRules.Blade)
                found.Note(ScheduleRule.BladeNotReady, listed, $"states the life of a blade for the set-up {part.Kind}, which mounts none");
        }
    }

    // A job whose blade change does not say which blade it mounts has the one that was taken off last.
    private void Mount(ListedJob listed, string bladeId, ScheduledSetUp? part)
    {
        var life = part?.MountedLife ?? blades.LifePutBack(bladeId);
        if (!blades.Mount(bladeId, life))
            found.Note(ScheduleRule.BladeNotReady, listed, $"mounts a blade {bladeId} with {life} billionths of its life left, and none such lies ready");
    }

    // By start, those between jobs before any worn blade and before the work, and those that follow one another in the order in which they are done.
    private bool InOrder(ListedJob listed, List<string> needed)
    {
        var parts = listed.Scheduled.SetUps;
        var between = parts.TakeWhile(part => part.Kind != SetUpRules.BladeWorn).ToList();
        var kinds = between.Where(part => !IsBeside(part)).Select(part => part.Kind).Where(needed.Contains).Distinct().ToList();
        return parts.Zip(parts.Skip(1)).All(pair => pair.First.Start <= pair.Second.Start)
            && parts.Skip(between.Count).All(part => part.Kind == SetUpRules.BladeWorn)
            && !between.Exists(part => part.Start >= listed.Start && part.Finish > listed.Start)
            && kinds.SequenceEqual(needed.Where(kinds.Contains));
    }

    // In the order in which they are done. Parts of no duration are not listed; a blade change may be, to say which blade it mounts.
    private List<(string Kind, long Seconds)> Needed(SetUpState to)
    {
        var needed = new List<(string Kind, long Seconds)>();
        Need(SetUpRules.GradeGroup, gradeGroups.Seconds(gradeGroup, to.GradeGroup), 1);
        Need(SetUpRules.Blade, bladeTimes.Seconds(blades.BladeId, to.BladeId), 0);
        Need(SetUpRules.Section, sections.Seconds(section, to.Section), 1);
        Need(SetUpRules.Angle, angles.Seconds(angle, to.Angle), 1);
        return needed;

        void Need(string kind, long? seconds, long least)
        {
            if (seconds >= least)
                needed.Add((kind, seconds.Value));
        }
    }
}
