using System.Text.Json.Serialization;

namespace SawEngine.Api.Wire;

/// <summary>One thing that is wrong with a request.</summary>
/// <param name="Pointer">Where it is in the body sent, as a JSON Pointer fragment (RFC 6901).</param>
/// <param name="Code">What it is, for a program.</param>
/// <param name="Detail">What it is, for a person.</param>
public sealed record Fault(
    [property: JsonPropertyOrder(0)] string Pointer,
    [property: JsonPropertyOrder(1)] string Code,
    [property: JsonPropertyOrder(2)] string Detail);
