namespace SawEngine.Api.Wire.Rules;

/// <summary>A length in the unit of the request, zero or more; positive where <c>MinimumIsExclusive</c> is set.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class LengthRangeAttribute(double maximum = Limits.Length) : QuantityRangeAttribute(0, maximum)
{
    public override decimal Grid(LengthUnit unit) => LengthScale.Grid(unit);
}
