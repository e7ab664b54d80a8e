using System.Collections;
using System.Runtime.CompilerServices;

namespace SawEngine.Core;

/// <summary>A list that is equal to another with equal items in the same order, so that records that hold it compare by value.</summary>
/// <typeparam name="T">The items.</typeparam>
[CollectionBuilder(typeof(ValueLists), nameof(ValueLists.Create))]
public sealed class ValueList<T>(IReadOnlyList<T> items) : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    /// <inheritdoc/>
    public int Count => items.Count;

    /// <inheritdoc/>
    public T this[int index] => items[index];

    /// <inheritdoc/>
    public bool Equals(ValueList<T>? other) => other is not null && (ReferenceEquals(this, other) || this.SequenceEqual(other));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ValueList<T>);

    /// <inheritdoc/>
    public override int GetHashCode() => items.Aggregate(items.Count, HashCode.Combine);

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => items.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
