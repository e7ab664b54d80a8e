namespace SawEngine.Solvers.Scheduling;

/// <summary>How good a schedule is: least first, member by member.</summary>
/// <param name="Unscheduled">Jobs left out.</param>
/// <param name="CostMicros">All costs.</param>
/// <param name="Moved">Seconds by which starts differ from those of an earlier schedule.</param>
/// <param name="DeliveryFinishes">Sum of the deliveries' ends.</param>
/// <param name="Makespan">End of the last job.</param>
internal readonly record struct Score(int Unscheduled, Int128 CostMicros, Int128 Moved, Int128 DeliveryFinishes, long Makespan) : IComparable<Score>
{
    public int CompareTo(Score other)
    {
        if (Unscheduled != other.Unscheduled)
            return Unscheduled.CompareTo(other.Unscheduled);
        if (CostMicros != other.CostMicros)
            return CostMicros.CompareTo(other.CostMicros);
        if (Moved != other.Moved)
            return Moved.CompareTo(other.Moved);
        return DeliveryFinishes != other.DeliveryFinishes
            ? DeliveryFinishes.CompareTo(other.DeliveryFinishes)
            : Makespan.CompareTo(other.Makespan);
    }
}
