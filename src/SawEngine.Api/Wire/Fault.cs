namespace SawEngine.Api.Wire;

/// <summary>One thing that is wrong with a request.</summary>
public sealed record Fault
{
    /// <summary>Where it is in the body sent, as a JSON Pointer fragment (RFC 6901); absent where a parameter is at fault.</summary>
    public string? Pointer { get; init; }

    /// <summary>The parameter of path or query that is at fault; absent where the body is.</summary>
    public string? Parameter { get; init; }

    /// <summary>What it is, for a program.</summary>
    public required string Code { get; init; }

    /// <summary>What it is, for a person.</summary>
    public required string Detail { get; init; }
}
