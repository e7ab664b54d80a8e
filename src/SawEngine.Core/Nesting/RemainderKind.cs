namespace SawEngine.Core.Nesting;

/// <summary>What becomes of a bar's remainder.</summary>
public enum RemainderKind
{
    /// <summary>Too short to be kept, or nothing at all.</summary>
    Scrap,

    /// <summary>Goes back to the rack.</summary>
    Remnant,
}
