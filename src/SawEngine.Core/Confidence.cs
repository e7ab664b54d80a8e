namespace SawEngine.Core;

/// <summary>How far a value can be trusted, by where it comes from.</summary>
public enum Confidence
{
    /// <summary>Read in a published source, which is named.</summary>
    Published,

    /// <summary>Quoted by a secondary source, which is named.</summary>
    Secondary,

    /// <summary>Usual in the trade; no source.</summary>
    CommonPractice,

    /// <summary>From memory; a starting value to be replaced by the shop's own.</summary>
    FromMemory,

    /// <summary>Stated by the caller in the request.</summary>
    Caller,

    /// <summary>Computed by the engine from other values.</summary>
    Computed,
}
