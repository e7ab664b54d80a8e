using SawEngine.Api.Features.Orders;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Nests;

/// <summary>One piece on a bar, from its first to its last point along the bar.</summary>
public sealed record NestCutJson
{
    /// <summary>The piece.</summary>
    public required string PieceId { get; init; }

    /// <summary>Distance of its first point from the bar's start.</summary>
    [LengthRange]
    public required decimal Start { get; init; }

    /// <summary>Distance of its last point from the bar's start.</summary>
    [LengthRange]
    public required decimal End { get; init; }

    /// <summary>The length that is cut, the middle of the tolerance, measured where lengthAt says; absent where it is the ordered length.</summary>
    [LengthRange]
    public decimal? AimedLength { get; init; }

    /// <summary>Its first face on the bar; absent where square.</summary>
    public EndCutJson? StartCut { get; init; }

    /// <summary>Its last face on the bar; absent where square.</summary>
    public EndCutJson? EndCut { get; init; }
}
