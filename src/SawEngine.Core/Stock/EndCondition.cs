namespace SawEngine.Core.Stock;

/// <summary>How the two ends of a bar came to be; only a sawn end may become a piece's face.</summary>
public enum EndCondition
{
    /// <summary>Sawn square.</summary>
    Sawn,

    /// <summary>Sheared.</summary>
    Sheared,

    /// <summary>Flame cut.</summary>
    FlameCut,

    /// <summary>As rolled.</summary>
    Rolled,
}
