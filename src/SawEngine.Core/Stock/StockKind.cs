namespace SawEngine.Core.Stock;

/// <summary>Where stock comes from.</summary>
public enum StockKind
{
    /// <summary>Bars on hand.</summary>
    Bar,

    /// <summary>A shorter bar kept from earlier work; each one single.</summary>
    Remnant,

    /// <summary>Bars that can be bought.</summary>
    Purchasable,
}
