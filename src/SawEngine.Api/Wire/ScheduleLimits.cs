namespace SawEngine.Api.Wire;

/// <summary>Limits of a schedule beside those of every operation (<see cref="Limits"/>).</summary>
public static class ScheduleLimits
{
    /// <summary>Most jobs.</summary>
    public const int Jobs = 2_000;

    /// <summary>Longest working time of a job in seconds: thirty days without a pause.</summary>
    public const int SecondsOfJob = 2_592_000;

    /// <summary>Most steps of a job.</summary>
    public const int Steps = 100_000;

    /// <summary>Most steps of all jobs on all their saws together.</summary>
    public const int AllSteps = 2_000_000;
}
