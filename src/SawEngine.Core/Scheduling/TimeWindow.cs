namespace SawEngine.Core.Scheduling;

/// <summary>A span in whole seconds since the start of the plan, end excluded, in which a saw is attended.</summary>
/// <param name="Start">First second.</param>
/// <param name="End">Second after the last.</param>
public readonly record struct TimeWindow(long Start, long End)
{
    /// <summary>Length in seconds.</summary>
    public long Seconds => End - Start;
}
