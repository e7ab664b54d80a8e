namespace SawEngine.Core.Accuracy;

/// <summary>What would hold a tolerance of length that a saw does not hold.</summary>
public enum LengthCure
{
    /// <summary>One stroke instead of several: a saw with a longer stroke, or shorter pieces.</summary>
    OneStroke,

    /// <summary>Setting bias and scale to nil.</summary>
    Calibrate,

    /// <summary>Cutting against a fixed stop, so that only the kerf's error is left.</summary>
    Stop,

    /// <summary>Cutting longer and machining to length.</summary>
    MachiningAllowance,
}
