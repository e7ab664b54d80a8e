using SawEngine.Api.Features.Orders;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Plans;

/// <summary>One piece on a bar, from its first to its last point. Pieces whose facing ends are inclined alike overlap.</summary>
public sealed record LayoutCutJson
{
    /// <summary>Order that it serves.</summary>
    public required string OrderId { get; init; }

    /// <summary>Line that it serves.</summary>
    public required string LineId { get; init; }

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

    /// <summary>How the piece is turned against the order; absent where it lies as ordered.</summary>
    [KnownValues(PieceTurnText.EndForEnd, PieceTurnText.Over, PieceTurnText.EndForEndOver)]
    public string? Turn { get; init; }

    /// <summary>What the piece takes of the bar's centerline, by which it is booked; absent where both faces are square: then it is end less start.</summary>
    [LengthRange]
    public decimal? CenterlineLength { get; init; }
}
