namespace SawEngine.Core;

/// <summary>Makes lists that compare by value.</summary>
public static class ValueLists
{
    /// <summary>A list of some items.</summary>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) => new(items.ToArray());
}
