namespace SawEngine.Solvers.Scheduling;

/// <summary>How good a schedule is: least first, member by member.</summary>
internal readonly record struct Score(int Unscheduled, Int128 CostMicros, Int128 DeliveryFinishes, long Makespan) : IComparable<Score>
{
    public int CompareTo(Score other)
    {
        if (Unscheduled != other.Unscheduled)
            return Unscheduled.CompareTo(other.Unscheduled);
        if (CostMicros != other.CostMicros)
            return CostMicros.CompareTo(other.CostMicros);
        return DeliveryFinishes != other.DeliveryFinishes
            ? DeliveryFinishes.CompareTo(other.DeliveryFinishes)
            : Makespan.CompareTo(other.Makespan);
    }
}
