namespace SawEngine.Core.Orders;

/// <summary>Names an order line; the pieces of one line are alike.</summary>
/// <param name="OrderId">The sales order; empty where pieces come without orders.</param>
/// <param name="LineId">The order line, or the piece id where pieces come without orders.</param>
public readonly record struct PieceRef(string OrderId, string LineId) : IComparable<PieceRef>
{
    /// <summary>The id that stock is reserved for: the order's, or the piece's where pieces come without orders.</summary>
    public string ReservationId => OrderId.Length == 0 ? LineId : OrderId;

    /// <summary>Order by order id, then line id, ordinal.</summary>
    public int CompareTo(PieceRef other)
    {
        var byOrder = string.CompareOrdinal(OrderId, other.OrderId);
        return byOrder != 0 ? byOrder : string.CompareOrdinal(LineId, other.LineId);
    }

    /// <inheritdoc/>
    public override string ToString() => OrderId.Length == 0 ? LineId : $"{OrderId}/{LineId}";

    /// <summary>Order by order id, then line id, ordinal.</summary>
    public static bool operator <(PieceRef left, PieceRef right) => left.CompareTo(right) < 0;

    /// <summary>Order by order id, then line id, ordinal.</summary>
    public static bool operator >(PieceRef left, PieceRef right) => left.CompareTo(right) > 0;

    /// <summary>Order by order id, then line id, ordinal.</summary>
    public static bool operator <=(PieceRef left, PieceRef right) => left.CompareTo(right) <= 0;

    /// <summary>Order by order id, then line id, ordinal.</summary>
    public static bool operator >=(PieceRef left, PieceRef right) => left.CompareTo(right) >= 0;
}
