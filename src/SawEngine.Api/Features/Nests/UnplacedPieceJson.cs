using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.Nests;

/// <summary>Pieces that are on no bar.</summary>
public sealed record UnplacedPieceJson
{
    /// <summary>Reason in the evaluation of an edited nest: the pieces are ordered, but the edit left them out.</summary>
    internal const string NotInLayouts = "not_in_layouts";

    /// <summary>The piece.</summary>
    public required string PieceId { get; init; }

    /// <summary>How many of it.</summary>
    [Range(1, Limits.TotalQuantity)]
    public required int Quantity { get; init; }

    /// <summary>Why.</summary>
    [KnownValues(
        UnplacedReason.NoStock, UnplacedReason.OtherOwner, UnplacedReason.OtherPlant, UnplacedReason.Reserved, UnplacedReason.NoCertificate, UnplacedReason.NoHeat,
        UnplacedReason.LongerThanEveryBar, UnplacedReason.StockUsedUp, UnplacedReason.HigherPriority, UnplacedReason.UnderAccepted, UnplacedReason.NoSingleHeat,
        UnplacedReason.PieceTooShort, UnplacedReason.PieceTooLong, UnplacedReason.NotVerified, NotInLayouts)]
    public required string Reason { get; init; }
}
