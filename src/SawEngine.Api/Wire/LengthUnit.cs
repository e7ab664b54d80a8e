namespace SawEngine.Api.Wire;

/// <summary>Unit of every length in a request and its answer.</summary>
public enum LengthUnit
{
    /// <summary>Millimeters.</summary>
    Mm,

    /// <summary>Inches.</summary>
    In,
}
