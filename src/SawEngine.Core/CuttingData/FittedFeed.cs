namespace SawEngine.Core.CuttingData;

/// <summary>A blade feed that the motor can drive.</summary>
/// <param name="Feed">The feed.</param>
/// <param name="Kilowatts">The highest power on the way.</param>
/// <param name="PowerFactor">What is left of the cutting rate for want of power; 1 where there is enough.</param>
internal sealed record FittedFeed(BladeFeed Feed, double Kilowatts, double PowerFactor);
