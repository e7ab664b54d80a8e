namespace SawEngine.Api.Wire;

/// <summary>One thing that is wrong with a request.</summary>
public sealed record Fault
{
    /// <summary>Where it is in the body sent, as a JSON Pointer fragment (RFC 6901).</summary>
    public required string Pointer { get; init; }

    /// <summary>What it is, for a program.</summary>
    public required string Code { get; init; }

    /// <summary>What it is, for a person.</summary>
    public required string Detail { get; init; }
}
