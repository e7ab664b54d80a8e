using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core;

namespace SawEngine.Api.Features.CuttingData;

/// <summary>A factor between the reference values of the grade and the data of the cut.</summary>
public sealed record CutFactorJson
{
    /// <summary>What causes it.</summary>
    [KnownValues("width_of_cut", "carbon_steel_teeth", "carbide_teeth", "dry", "saw_speed_range", "bundle", "rate_factor", "power")]
    public required string Name { get; init; }

    /// <summary>The factor.</summary>
    [Range(0, 10_000)]
    public required decimal Value { get; init; }

    /// <summary>Rule that sets it: publication, table or practice.</summary>
    public required string Source { get; init; }

    /// <summary>How far it can be trusted.</summary>
    [KnownValues(typeof(Confidence))]
    public required string Confidence { get; init; }
}
