namespace SawEngine.Core.Planning;

/// <summary>What is known of a nest.</summary>
public enum NestStatus
{
    /// <summary>All pieces are placed at a cost that is proved least.</summary>
    Optimal,

    /// <summary>All pieces are placed.</summary>
    Feasible,

    /// <summary>Some pieces are placed.</summary>
    Partial,

    /// <summary>No piece is placed.</summary>
    Infeasible,
}
