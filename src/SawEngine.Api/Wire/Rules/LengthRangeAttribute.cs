namespace SawEngine.Api.Wire.Rules;

/// <summary>A length in the unit of the request: zero or more where no minimum is given, positive where <c>MinimumIsExclusive</c> is set.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class LengthRangeAttribute(double minimum, double maximum) : QuantityRangeAttribute(minimum, maximum)
{
    public LengthRangeAttribute(double maximum = Limits.Length) : this(0, maximum)
    {
    }

    public override decimal Grid(LengthUnit unit) => LengthScale.Grid(unit);
}
