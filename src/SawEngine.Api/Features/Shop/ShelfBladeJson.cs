using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Shop;

/// <summary>A used blade that lies ready for a saw. New ones are always at hand.</summary>
public sealed record ShelfBladeJson
{
    /// <summary>Which of the saw's blades it is one of; several of one blade may lie ready.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string BladeId { get; init; }

    /// <summary>Share of a new blade's life that is left.</summary>
    [Range(0, 1)]
    public required decimal RemainingLife { get; init; }
}
