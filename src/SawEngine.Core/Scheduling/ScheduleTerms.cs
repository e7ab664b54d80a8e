namespace SawEngine.Core.Scheduling;

/// <summary>What a schedule costs, by cause, in millionths of the currency.</summary>
/// <param name="Tardiness">Hours late of the deliveries.</param>
/// <param name="Work">Seconds of work at each saw's cost.</param>
/// <param name="SetUps">Seconds of set-ups at each saw's cost; parts that are done at the same time count once.</param>
/// <param name="Overtime">The extra price of the seconds of set-up and work in overtime.</param>
/// <param name="Makespan">The time until the last job is done.</param>
/// <param name="Stability">Starts moved and saws changed against the earlier schedule.</param>
public readonly record struct ScheduleTerms(Int128 Tardiness, Int128 Work, Int128 SetUps, Int128 Overtime, Int128 Makespan, Int128 Stability)
{
    /// <summary>All of it.</summary>
    public Int128 Total => Tardiness + Work + SetUps + Overtime + Makespan + Stability;
}
