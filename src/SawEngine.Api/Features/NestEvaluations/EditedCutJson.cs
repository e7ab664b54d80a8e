using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Orders;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>One piece on an edited bar, as the answer of a nest writes it.</summary>
public sealed record EditedCutJson
{
    /// <summary>Distance of its first point from the bar's start. Left out, the piece lies as near to the one before it as cutting allows, or ends where end says.</summary>
    [JsonPropertyOrder(-2), LengthRange]
    public decimal? Start { get; init; }

    /// <summary>Distance of its last point from the bar's start. Left out, it is the start and the piece's overall length.</summary>
    [JsonPropertyOrder(-1), LengthRange]
    public decimal? End { get; init; }

    /// <summary>The piece.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string PieceId { get; init; }

    /// <summary>The length that is cut. It follows from the order and counts for nothing.</summary>
    [LengthRange]
    public decimal? AimedLength { get; init; }

    /// <summary>Its first face on the bar. Where both faces are left out they are as ordered, in the turn stated; else the one left out is square.</summary>
    public EndCutJson? StartCut { get; init; }

    /// <summary>Its last face on the bar. Where both faces are left out they are as ordered, in the turn stated; else the one left out is square.</summary>
    public EndCutJson? EndCut { get; init; }

    /// <summary>How the piece is turned against the order.</summary>
    public PieceTurn Turn { get; init; } = PieceTurn.None;

    /// <summary>What the piece takes of the bar's centerline. It is checked and counts for nothing: it follows from the order and the positions.</summary>
    [LengthRange]
    public decimal? CenterlineLength { get; init; }
}
