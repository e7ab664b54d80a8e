namespace SawEngine.Api.Wire.Rules;

/// <summary>An angle in degrees with at most three decimals.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class AngleRangeAttribute(double minimum, double maximum) : QuantityRangeAttribute(minimum, maximum)
{
    public override decimal Grid(LengthUnit unit) => 0.001m;
}
