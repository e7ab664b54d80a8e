namespace SawEngine.Api.Wire;

/// <summary>Limits of cutting data beside those of every operation (<see cref="Limits"/>).</summary>
public static class CuttingDataLimits
{
    /// <summary>Most cuts.</summary>
    public const int Cuts = 1_000;

    /// <summary>Most cuts times the saws that each is compared on. A corner of an outline or a contact width counts a fifth.</summary>
    public const int CutsOnSaws = 5_000;
}
