using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>Days on which nobody works, such as a shutdown in summer.</summary>
public sealed record ClosureJson
{
    /// <summary>First day.</summary>
    public required DateOnly FirstDay { get; init; }

    /// <summary>Last day, not before the first.</summary>
    public required DateOnly LastDay { get; init; }

    /// <summary>Why, for people.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? Reason { get; init; }
}
