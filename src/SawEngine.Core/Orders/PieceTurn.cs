namespace SawEngine.Core.Orders;

/// <summary>
/// How a piece lies on the bar against the way it is ordered: the half turns that keep the bar's axis, and height and width apart.
/// </summary>
public enum PieceTurn
{
    /// <summary>As ordered: the first end comes first, the top is on top.</summary>
    None,

    /// <summary>Half a turn about the vertical: the second end comes first, the top stays on top.</summary>
    EndForEnd,

    /// <summary>Half a turn about the bar's axis: the first end comes first, the top lies below.</summary>
    Over,

    /// <summary>Half a turn about the horizontal across the bar: the second end comes first, the top lies below, the right-hand side stays there.</summary>
    EndForEndOver,
}
