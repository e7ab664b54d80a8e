namespace SawEngine.Core.Orders;

/// <summary>Where the ordered length of a mitered piece is measured.</summary>
public enum LengthAt
{
    /// <summary>Between the two farthest points along the bar.</summary>
    Overall,

    /// <summary>On the longest edge of the section's bounding box.</summary>
    LongSide,

    /// <summary>On the shortest edge of the section's bounding box.</summary>
    ShortSide,

    /// <summary>On the center of the section's bounding box.</summary>
    Centerline,
}
