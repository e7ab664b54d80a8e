using SawEngine.Core.Quantities;

namespace SawEngine.Core.Saws;

/// <summary>The largest sections that a saw holds square.</summary>
/// <param name="Round">Largest diameter of rounds, round tubes and pipes.</param>
/// <param name="Width">Largest width of all other sections, along the blade.</param>
/// <param name="Height">Largest height of all other sections, along the blade's travel.</param>
public sealed record SawCapacity(Length Round, Length Width, Length Height)
{
    /// <summary>The largest of the three, by which blade and motor are usually sized.</summary>
    public Length Largest => Length.Max(Round, Length.Max(Width, Height));
}
