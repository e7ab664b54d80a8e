using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.CuttingData;

/// <summary>Cuts whose settings and times are wanted on the saws of a shop, without orders, stock and dates.</summary>
public sealed record CuttingDataRequest : OperationRequest
{
    /// <summary>The cuts.</summary>
    [MinLength(1), MaxLength(CuttingDataLimits.Cuts)]
    public required IReadOnlyList<WantedCutJson> Cuts { get; init; }

    /// <summary>Whether each cut is compared over all blades of the saws, not over the best of each.</summary>
    public bool CompareBlades { get; init; }

    /// <summary>The request's own sections.</summary>
    [MaxLength(PlanLimits.Sections)]
    public IReadOnlyList<SectionJson> Sections { get; init; } = [];

    /// <summary>The request's own grades.</summary>
    [MaxLength(PlanLimits.Grades)]
    public IReadOnlyList<GradeJson> Grades { get; init; } = [];

    /// <summary>Where it is cut; calendars, rates, trim and remnant rule do not matter here.</summary>
    public required ShopJson Shop { get; init; }
}
