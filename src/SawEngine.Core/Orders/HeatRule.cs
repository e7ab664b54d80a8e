namespace SawEngine.Core.Orders;

/// <summary>Which heats may serve an order line.</summary>
public enum HeatRule
{
    /// <summary>Any heat, mixed as it comes.</summary>
    Any,

    /// <summary>All pieces of the line from one heat.</summary>
    Single,

    /// <summary>All pieces from the heat that the line names.</summary>
    Named,
}
