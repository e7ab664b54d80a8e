namespace SawEngine.Solvers.Scheduling.Search;

/// <summary>A place of a sequence with sums over it and all before it, side by side in memory.</summary>
internal struct Place
{
    public int Job;

    /// <summary>Seconds of the set-up before it.</summary>
    public int SetUp;

    /// <summary>How many jobs wait for their release.</summary>
    public int Waits;

    /// <summary>Of the work, on the axis.</summary>
    public long Start;

    /// <summary>On the axis.</summary>
    public long Finish;

    /// <summary>Seconds from the due date to the finish, as time passes; negative where it is early.</summary>
    public long Late;

    /// <summary>Cost of a second late of this job.</summary>
    public long Weight;

    /// <summary>Sum of the costs.</summary>
    public long Cost;

    /// <summary>Sum of the costs of work and set-ups.</summary>
    public long OwnCost;

    /// <summary>Sum of the weights of late jobs.</summary>
    public long LateWeight;

    /// <summary>Sum of what is paid for being late.</summary>
    public readonly long LateCost => Cost - OwnCost;
}
