namespace SawEngine.Core.CuttingData;

/// <summary>The points at which computed values leave floating point.</summary>
internal static class Rounded
{
    /// <summary>To a number of decimals, half to even.</summary>
    public static decimal To(double value, int decimals) => decimal.Round((decimal)value, decimals, MidpointRounding.ToEven);

    /// <summary>Up to 0.1. A value within 1e-9 above a tenth stays on it.</summary>
    public static decimal UpToTenth(double value) => decimal.Ceiling((decimal)(value * 10 - 1e-8)) / 10m;
}
