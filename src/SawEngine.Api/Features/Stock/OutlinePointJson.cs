using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Stock;

/// <summary>A corner of a custom section, as drawn.</summary>
public sealed record OutlinePointJson
{
    /// <summary>To the right, in the length unit of the request.</summary>
    [Range(-Limits.Length, Limits.Length)]
    public required decimal X { get; init; }

    /// <summary>Upward, in the length unit of the request.</summary>
    [Range(-Limits.Length, Limits.Length)]
    public required decimal Y { get; init; }
}
