namespace SawEngine.Core.SetUps;

/// <summary>What has to be changed on a saw between two jobs. The parts follow one another in this order.</summary>
public static class SetUpRules
{
    /// <summary>Kind of a change to another section.</summary>
    public const string Section = "section";

    /// <summary>Kind of a change to another grade group.</summary>
    public const string GradeGroup = "gradeGroup";

    /// <summary>Kind of a change to another blade.</summary>
    public const string Blade = "blade";

    /// <summary>Kind of a change to a new blade of the same kind, inside a job.</summary>
    public const string BladeWorn = "bladeWorn";

    /// <summary>The parts, in order; none where nothing changes. Parts of no duration are left out.</summary>
    public static IReadOnlyList<SetUpPart> Between(SetUpState from, SetUpState to, SetUpTimes times)
    {
        var parts = new List<SetUpPart>(3);
        Add(parts, GradeGroup, from.GradeGroup, to.GradeGroup, times.GradeGroup);
        Add(parts, Blade, from.BladeId, to.BladeId, times.Blade);
        Add(parts, Section, from.Section, to.Section, times.Section);
        return parts;
    }

    private static void Add(List<SetUpPart> parts, string kind, string? from, string? to, long seconds)
    {
        if (to is not null && seconds > 0 && !string.Equals(from, to, StringComparison.Ordinal))
            parts.Add(new(kind, seconds));
    }
}
