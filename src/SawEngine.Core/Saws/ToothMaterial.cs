namespace SawEngine.Core.Saws;

/// <summary>Material of a blade's teeth.</summary>
public enum ToothMaterial
{
    /// <summary>High-speed-steel edge on a spring-steel back.</summary>
    Bimetal,

    /// <summary>Carbide-tipped.</summary>
    Carbide,

    /// <summary>Carbon steel.</summary>
    CarbonSteel,
}
