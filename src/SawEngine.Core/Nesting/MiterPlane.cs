namespace SawEngine.Core.Nesting;

/// <summary>The planes in which faces are inclined.</summary>
[Flags]
public enum MiterPlane
{
    /// <summary>All faces are square.</summary>
    None = 0,

    /// <summary>The plane of the section's width: the saw swivels with the bar as it lies.</summary>
    Width = 1,

    /// <summary>The plane of the section's height: the saw swivels with the bar turned a quarter.</summary>
    Height = 2,

    /// <summary>Both: no one position of the bar lets a swivel cut them.</summary>
    Both = Width | Height,
}
