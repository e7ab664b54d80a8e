namespace SawEngine.Api.Wire.Rules;

/// <summary>An amount of money, zero or more, with at most six decimals.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class CostRangeAttribute(double maximum = Limits.Cost) : QuantityRangeAttribute(0, maximum)
{
    public override decimal Grid(LengthUnit unit) => 0.000001m;
}
