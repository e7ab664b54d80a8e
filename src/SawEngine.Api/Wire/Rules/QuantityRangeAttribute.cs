using System.ComponentModel.DataAnnotations;

namespace SawEngine.Api.Wire.Rules;

/// <summary>A number within bounds and no finer than a grid; the bounds stand in the OpenAPI document too.</summary>
public abstract class QuantityRangeAttribute(double minimum, double maximum) : RangeAttribute(minimum, maximum)
{
    /// <summary>The finest step that can be stated.</summary>
    public abstract decimal Grid(LengthUnit unit);
}
