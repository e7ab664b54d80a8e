using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>A change that takes another time than the saw's usual one.</summary>
public sealed record SetUpChangeJson
{
    /// <summary>What is changed.</summary>
    public required SetUpChangeKind Kind { get; init; }

    /// <summary>Section, grade group or angle in degrees before; what is unknown at planStart where absent.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? From { get; init; }

    /// <summary>Section, grade group or angle in degrees after.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public required string To { get; init; }

    /// <summary>Seconds that it takes, rounded up to whole ones.</summary>
    [Range(0, 86400)]
    public required decimal Seconds { get; init; }
}
