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

    /// <summary>Most loads of a job.</summary>
    public const int Loads = 1_000;

    /// <summary>Most jobs that one job follows.</summary>
    public const int Predecessors = 100;

    /// <summary>Most parts of a job.</summary>
    public const int Parts = 20;

    /// <summary>Most jobs and parts of jobs in an edited schedule.</summary>
    public const int ScheduledJobs = 10_000;

    /// <summary>Most set-ups and spans of work in an edited schedule.</summary>
    public const int Spans = 50_000;

    /// <summary>Largest factor on a cause of cost.</summary>
    public const int Weight = 1_000;

    /// <summary>Most steps of all jobs on all their saws together.</summary>
    public const int AllSteps = 2_000_000;
}
