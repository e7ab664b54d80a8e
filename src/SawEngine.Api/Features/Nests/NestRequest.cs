using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SawEngine.Core.Nesting.Alternatives;

namespace SawEngine.Api.Features.Nests;

/// <summary>A request for a nest, and for what else is worth knowing of it.</summary>
public sealed record NestRequest : NestProblemRequest
{
    private const int Kinds = 4;

    /// <summary>Kinds of nests that are wanted beside the cheapest: each takes about as long again, fewestLayouts up to twenty times, and is listed where it is better in its kind and costs at most 5 % more.</summary>
    [JsonPropertyOrder(1), MaxLength(Kinds)]
    public IReadOnlyList<NestKind> Alternatives { get; init; } = [];

    /// <summary>How far pieces, quantities and stock may be changed to look for what saves a bar; nothing is looked for where absent.</summary>
    [JsonPropertyOrder(2)]
    public NearMissLimitsJson? NearMisses { get; init; }

    /// <summary>Whether anything is wanted beside the cheapest nest.</summary>
    internal bool HasChoices => Alternatives.Count > 0 || NearMisses is not null;
}
