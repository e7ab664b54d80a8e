namespace SawEngine.Core.Stock;

/// <summary>Why no piece may be cut from a zone of a bar.</summary>
public enum ZoneKind
{
    /// <summary>The material is bad: no piece has any of it. Kerfs, trim and remainder may.</summary>
    Defective,

    /// <summary>It is kept for another use: it stays whole, in the remainder.</summary>
    Reserved,
}
