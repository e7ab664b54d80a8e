namespace SawEngine.Api.Features.Shop;

/// <summary>What is changed between two jobs, in the order in which it is done.</summary>
public enum SetUpKind
{
    /// <summary>Cleaning for another grade group.</summary>
    GradeGroup,

    /// <summary>Another blade.</summary>
    Blade,

    /// <summary>Another section.</summary>
    Section,

    /// <summary>Another angle.</summary>
    Angle,
}
