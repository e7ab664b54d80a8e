namespace SawEngine.Core.Planning;

/// <summary>How much of the orders is planned.</summary>
public enum PlanStatus
{
    /// <summary>Every piece.</summary>
    Complete,

    /// <summary>Some pieces.</summary>
    Partial,

    /// <summary>No piece.</summary>
    None,
}
