namespace SawEngine.Core.Stock;

/// <summary>What a bar is coated with.</summary>
public enum Coating
{
    /// <summary>Nothing that matters to cutting: bare, oiled, with mill scale.</summary>
    None,

    /// <summary>Galvanized or otherwise coated with zinc.</summary>
    Zinc,

    /// <summary>Painted, primed or powder coated; what with is for its data sheet to say.</summary>
    Paint,
}
