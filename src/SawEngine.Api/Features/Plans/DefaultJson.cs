using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core;

namespace SawEngine.Api.Features.Plans;

/// <summary>A value that the request left open and the engine filled in.</summary>
public sealed record DefaultJson
{
    /// <summary>Saw concerned.</summary>
    public string? SawId { get; init; }

    /// <summary>Path of the member in its saw.</summary>
    public required string Name { get; init; }

    /// <summary>The value.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public required decimal Value { get; init; }

    /// <summary>Its unit; absent for a pure number.</summary>
    public string? Unit { get; init; }

    /// <summary>Where it comes from.</summary>
    public required string Source { get; init; }

    /// <summary>How far it can be trusted.</summary>
    [KnownValues(typeof(Confidence))]
    public required string Confidence { get; init; }
}
