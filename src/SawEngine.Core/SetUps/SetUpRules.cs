namespace SawEngine.Core.SetUps;

/// <summary>
/// What has to be changed on a saw between two jobs. The parts follow one another in the order of <see cref="Order"/>, those that are done beside
/// the others (<see cref="SetUpTimes.Beside"/>) apart.
/// </summary>
public static class SetUpRules
{
    /// <summary>Kind of a change to another section.</summary>
    public const string Section = "section";

    /// <summary>Kind of a change to another grade group.</summary>
    public const string GradeGroup = "gradeGroup";

    /// <summary>Kind of a change to another blade.</summary>
    public const string Blade = "blade";

    /// <summary>Kind of a change to another angle.</summary>
    public const string Angle = "angle";

    /// <summary>Kind of a change to a new blade of the same kind, before or inside a job.</summary>
    public const string BladeWorn = "bladeWorn";

    /// <summary>The kinds between two jobs, in the order in which they are done.</summary>
    public static IReadOnlyList<string> Order { get; } = [GradeGroup, Blade, Section, Angle];

    /// <summary>The parts, in order; none where nothing changes. Parts of no duration are left out.</summary>
    public static IReadOnlyList<SetUpPart> Between(SetUpState from, SetUpState to, SetUpTimes times)
    {
        var parts = new List<SetUpPart>(Order.Count);
        foreach (var kind in Order)
        {
            var seconds = Seconds(kind, from, to, times);
            if (seconds > 0)
                parts.Add(new(kind, seconds));
        }
        return parts;
    }

    /// <summary>Whole seconds from the first part to the last: those that follow one another, or the longest beside them.</summary>
    public static long Seconds(SetUpState from, SetUpState to, SetUpTimes times)
    {
        var (following, longestBeside) = (0L, 0L);
        foreach (var kind in Order)
        {
            var seconds = Seconds(kind, from, to, times);
            if (times.Beside.Count > 0 && times.Beside.Contains(kind))
                longestBeside = Math.Max(longestBeside, seconds);
            else
                following += seconds;
        }
        return Math.Max(following, longestBeside);
    }

    /// <summary>Whole seconds of one part; 0 where nothing changes or the job does not care.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The kind is none of <see cref="Order"/>.</exception>
    public static long Seconds(string kind, SetUpState from, SetUpState to, SetUpTimes times) => kind switch
    {
        GradeGroup => Seconds(from.GradeGroup, to.GradeGroup, times.GradeGroup, times.GradeGroupChanges),
        Blade => Seconds(from.BladeId, to.BladeId, times.Blade, null),
        Section => Seconds(from.Section, to.Section, times.Section, times.SectionChanges),
        Angle => Seconds(from.Angle, to.Angle, times.Angle, times.AngleChanges),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of set-up between two jobs."),
    };

    /// <summary>What the saw is set up for once it was changed: what the job does not care about stays as it was.</summary>
    public static SetUpState After(SetUpState from, SetUpState to) =>
        to is { Section: not null, GradeGroup: not null, BladeId: not null, Angle: not null }
            ? to
            : new(to.Section ?? from.Section, to.GradeGroup ?? from.GradeGroup, to.BladeId ?? from.BladeId, to.Angle ?? from.Angle);

    private static long Seconds(string? from, string? to, long usual, SetUpChanges? changes) =>
        to is null || string.Equals(from, to, StringComparison.Ordinal) ? 0 : changes?.Seconds(from, to, usual) ?? usual;
}
