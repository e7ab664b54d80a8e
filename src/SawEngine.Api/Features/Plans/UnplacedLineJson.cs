using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.Plans;

/// <summary>Pieces of a line that are on no bar.</summary>
public sealed record UnplacedLineJson
{
    /// <summary>Order.</summary>
    public required string OrderId { get; init; }

    /// <summary>Line.</summary>
    public required string LineId { get; init; }

    /// <summary>How many pieces.</summary>
    [Range(1, Limits.TotalQuantity)]
    public required int Quantity { get; init; }

    /// <summary>Why.</summary>
    [KnownValues(
        UnplacedReason.NoStock, UnplacedReason.OtherOwner, UnplacedReason.OtherPlant, UnplacedReason.Reserved, UnplacedReason.NoCertificate, UnplacedReason.NoHeat, UnplacedReason.LongerThanEveryBar,
        UnplacedReason.StockUsedUp, UnplacedReason.HigherPriority, UnplacedReason.UnderAccepted, UnplacedReason.NoSingleHeat, UnplacedReason.NoSawHoldsSection, UnplacedReason.NoSawCutsMiter,
        UnplacedReason.PieceTooShort, UnplacedReason.PieceTooLong, UnplacedReason.BarTooHeavy, UnplacedReason.NoBladeCuts,
        UnplacedReason.NotVerified)]
    public required string Reason { get; init; }

    /// <summary>The row of a line's pieces.</summary>
    public static UnplacedLineJson Of(UnplacedPieces pieces) => new()
    {
        OrderId = pieces.Piece.OrderId,
        LineId = pieces.Piece.LineId,
        Quantity = pieces.Quantity,
        Reason = pieces.Reason,
    };
}
