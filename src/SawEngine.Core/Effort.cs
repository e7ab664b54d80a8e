namespace SawEngine.Core;

/// <summary>How much fixed work a solver may spend; never a time.</summary>
public enum Effort
{
    /// <summary>Constructive methods and one improvement.</summary>
    Quick,

    /// <summary>The full search.</summary>
    Standard,

    /// <summary>Search and proof.</summary>
    Thorough,
}
