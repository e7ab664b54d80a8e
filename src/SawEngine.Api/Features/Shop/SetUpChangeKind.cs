namespace SawEngine.Api.Features.Shop;

/// <summary>Changes whose time may depend on what was cut before.</summary>
public enum SetUpChangeKind
{
    /// <summary>To another section.</summary>
    Section,

    /// <summary>To another grade group.</summary>
    GradeGroup,

    /// <summary>To another angle.</summary>
    Angle,
}
