namespace SawEngine.Core.Nesting.Alternatives;

/// <summary>What would have to change.</summary>
public enum NearMissChange
{
    /// <summary>All pieces of a line, by some length.</summary>
    Shorter,

    /// <summary>A line, by some pieces.</summary>
    Fewer,

    /// <summary>One more bar of a stock item.</summary>
    OneMoreBar,
}
