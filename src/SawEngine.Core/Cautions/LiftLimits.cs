using SawEngine.Core.Quantities;

namespace SawEngine.Core.Cautions;

/// <summary>Masses from which lifting is cautioned.</summary>
/// <param name="TwoPersons">Above this mass, two persons or an aid.</param>
/// <param name="Crane">Above this mass, a crane.</param>
public sealed record LiftLimits(Mass TwoPersons, Mass Crane)
{
    /// <summary>23 kg is the load constant of the NIOSH lifting equation, for an ideal lift; 50 kg is common practice, no source.</summary>
    public static readonly LiftLimits Default = new(new Mass(23m), new Mass(50m));
}
