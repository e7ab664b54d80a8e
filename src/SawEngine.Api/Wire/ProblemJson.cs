using System.ComponentModel.DataAnnotations;
using System.Text.Json;

namespace SawEngine.Api.Wire;

/// <summary>Why a request was refused (RFC 9457).</summary>
public sealed record ProblemJson
{
    /// <summary>Media type of problems.</summary>
    public const string MediaType = "application/problem+json";

    /// <summary>The stable kind of problem, a URN.</summary>
    public required string Type { get; init; }

    /// <summary>The kind in words.</summary>
    public required string Title { get; init; }

    /// <summary>HTTP status.</summary>
    [Range(400, 599)]
    public required int Status { get; init; }

    /// <summary>What happened, for a person.</summary>
    public required string Detail { get; init; }

    /// <summary>Id under which the service's log and traces know the request.</summary>
    public string? TraceId { get; init; }

    /// <summary>The first hundred faults.</summary>
    [MaxLength(Limits.FaultsReported)]
    public IReadOnlyList<Fault>? Errors { get; init; }

    /// <summary>How many faults there are.</summary>
    [Range(1, 100_000_000)]
    public int? ErrorCount { get; init; }

    /// <summary>A problem without faults.</summary>
    public static ProblemJson Of(ProblemType type, string detail) =>
        new() { Type = type.Type, Title = type.Title, Status = type.Status, Detail = detail };

    /// <summary>A problem with faults.</summary>
    public static ProblemJson Of(ProblemType type, FaultList faults) => Of(type, Summary(faults)) with { Errors = faults.Kept, ErrorCount = faults.Count };

    /// <summary>The problem as bytes.</summary>
    public byte[] ToUtf8() => JsonSerializer.SerializeToUtf8Bytes(this, WireJson.Options);

    private static string Summary(FaultList faults) =>
        faults.Count == 1 ? $"{faults.Kept[0].Pointer ?? faults.Kept[0].Parameter}: {faults.Kept[0].Detail}"
        : faults.Count == faults.Kept.Count ? $"{faults.Count} faults."
        : $"{faults.Count} faults, of which the first {faults.Kept.Count} are listed.";
}
