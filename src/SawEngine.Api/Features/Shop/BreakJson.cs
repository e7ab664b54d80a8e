namespace SawEngine.Api.Features.Shop;

/// <summary>A break inside a shift: the saw is not attended.</summary>
public sealed record BreakJson
{
    /// <summary>Local start.</summary>
    public required TimeOnly Start { get; init; }

    /// <summary>Local end, after start; 00:00 is midnight at the end of the day.</summary>
    public required TimeOnly End { get; init; }
}
