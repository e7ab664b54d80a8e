using SawEngine.Core.Quantities;

namespace SawEngine.Core.Costs;

/// <summary>What an order line costs, by kind. Each amount is in whole cents; the lines add up to the plan's total.</summary>
/// <param name="Material">Stock used less the value of remainders; the loss of a shared bar goes to its lines by length.</param>
/// <param name="Machine">The saw's hours, set-up included.</param>
/// <param name="Labor">The operator's hours, set-up included.</param>
/// <param name="Blade">Share of blades worn.</param>
/// <param name="Handling">Fetching bars and putting back what is left, by length.</param>
public sealed record LineCost(Money Material, Money Machine, Money Labor, Money Blade, Money Handling)
{
    /// <summary>No cost.</summary>
    public static readonly LineCost None = new(Money.Zero, Money.Zero, Money.Zero, Money.Zero, Money.Zero);

    /// <summary>Sum of the kinds.</summary>
    public Money Total => Material + Machine + Labor + Blade + Handling;
}
