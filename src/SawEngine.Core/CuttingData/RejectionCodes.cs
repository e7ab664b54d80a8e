namespace SawEngine.Core.CuttingData;

/// <summary>Codes of why a blade that could make a cut was passed over for another.</summary>
public static class RejectionCodes
{
    /// <summary>Fewer mean teeth would be in the work than are wanted.</summary>
    public const string FewerThanWantedTeeth = "fewer_than_wanted_teeth";

    /// <summary>More mean teeth would be in the work than are wanted.</summary>
    public const string MoreThanWantedTeeth = "more_than_wanted_teeth";

    /// <summary>A coarser blade has enough teeth in the work.</summary>
    public const string CoarserBladeFits = "coarser_blade_fits";

    /// <summary>The chosen blade has the same pitch and is no slower.</summary>
    public const string Slower = "slower";
}
