namespace SawEngine.Core.CuttingData;

/// <summary>
/// Power of a cut: P = R kerf k C W / eta, the form of Machinery's Handbook with R the cutting rate in cm2/min, kerf in cm,
/// k the unit power in kW per cm3/min, C the thin-chip factor, W wear and eta the drive's efficiency.
/// </summary>
/// <param name="KerfMillimeters">Kerf in mm.</param>
/// <param name="UnitPower">k in kW per cm3/min.</param>
/// <param name="ThinChip">C.</param>
/// <param name="Wear">W.</param>
/// <param name="Efficiency">eta, above 0.</param>
internal readonly record struct CuttingPower(double KerfMillimeters, double UnitPower, double ThinChip, double Wear, double Efficiency)
{
    /// <summary>Kilowatts of the motor for each cm2/min.</summary>
    private double KilowattsPerRate => KerfMillimeters / 10 * UnitPower * ThinChip * Wear / Efficiency;

    public double Kilowatts(double rate) => rate * KilowattsPerRate;

    /// <summary>The cutting rate in cm2/min that a motor can give.</summary>
    public double RateAt(double kilowatts) => KilowattsPerRate > 0 ? kilowatts / KilowattsPerRate : double.MaxValue;
}
