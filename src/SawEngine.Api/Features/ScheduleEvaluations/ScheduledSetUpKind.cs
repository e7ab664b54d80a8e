namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>What is changed on a saw before or inside a job.</summary>
public enum ScheduledSetUpKind
{
    /// <summary>Cleaning for another grade group.</summary>
    GradeGroup,

    /// <summary>Another blade.</summary>
    Blade,

    /// <summary>Another section.</summary>
    Section,

    /// <summary>Another angle.</summary>
    Angle,

    /// <summary>Another blade of the same kind for a worn one.</summary>
    BladeWorn,
}
