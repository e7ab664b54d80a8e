using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Stock;

/// <summary>A corner of a custom section, as drawn.</summary>
public sealed record OutlinePointJson
{
    /// <summary>To the right, in the length unit of the request.</summary>
    [LengthRange(-Limits.Length, Limits.Length)]
    public required decimal X { get; init; }

    /// <summary>Upward, in the length unit of the request.</summary>
    [LengthRange(-Limits.Length, Limits.Length)]
    public required decimal Y { get; init; }
}
