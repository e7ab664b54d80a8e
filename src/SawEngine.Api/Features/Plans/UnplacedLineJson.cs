namespace SawEngine.Api.Features.Plans;

/// <summary>Pieces of a line that are on no bar.</summary>
public sealed record UnplacedLineJson
{
    /// <summary>Order.</summary>
    public required string OrderId { get; init; }

    /// <summary>Line.</summary>
    public required string LineId { get; init; }

    /// <summary>How many pieces.</summary>
    public required int Quantity { get; init; }

    /// <summary>Why, a code of the published list.</summary>
    public required string Reason { get; init; }
}
