namespace SawEngine.Core.Quantities;

/// <summary>An amount of money in the currency of the request. Exact decimal arithmetic; rounded once, to cents at the order line.</summary>
/// <param name="Amount">The value in the canonical unit named by the property.</param>
public readonly record struct Money(decimal Amount) : IComparable<Money>
{
    /// <summary>Zero; the default value.</summary>
    public static readonly Money Zero;

    /// <summary>Sum; a decimal overflow throws.</summary>
    public static Money operator +(Money a, Money b) => new(a.Amount + b.Amount);

    /// <summary>Difference; a decimal overflow throws.</summary>
    public static Money operator -(Money a, Money b) => new(a.Amount - b.Amount);

    /// <summary>Multiple by a pure number.</summary>
    public static Money operator *(Money a, decimal factor) => new(a.Amount * factor);

    /// <summary>Order by size.</summary>
    public static bool operator <(Money a, Money b) => a.Amount < b.Amount;

    /// <summary>Order by size.</summary>
    public static bool operator >(Money a, Money b) => a.Amount > b.Amount;

    /// <summary>Order by size.</summary>
    public static bool operator <=(Money a, Money b) => a.Amount <= b.Amount;

    /// <summary>Order by size.</summary>
    public static bool operator >=(Money a, Money b) => a.Amount >= b.Amount;

    /// <inheritdoc/>
    public int CompareTo(Money other) => Amount.CompareTo(other.Amount);
}
