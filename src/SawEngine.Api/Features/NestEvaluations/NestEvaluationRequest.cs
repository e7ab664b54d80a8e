using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SawEngine.Api.Features.Nests;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>A request for a nest, and a nest for it that someone edited by hand.</summary>
public sealed record NestEvaluationRequest : NestProblemRequest
{
    /// <summary>The edited nest.</summary>
    [JsonPropertyOrder(1), MaxLength(Limits.TotalQuantity)]
    public required IReadOnlyList<EditedLayoutJson> Layouts { get; init; }

    /// <summary>Whether the engine makes its own nest to compare with; effort and timeLimitSeconds are for this one.</summary>
    [JsonPropertyOrder(2)]
    public bool Compare { get; init; } = true;
}
