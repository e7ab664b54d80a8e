using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace SawEngine.Solvers.Nesting.Pricing;

/// <summary>
/// A bounded knapsack solved for every capacity at once: the greatest value of pieces whose sizes sum up to no more than a number of cells.
/// Counts are split (<see cref="BinarySplit"/>), and a bit a cell remembers which items were taken. Vectors are eight lanes wide on every machine, so that bits are equal.
/// </summary>
internal sealed class KnapsackTable
{
    private const int Lanes = 8;

    private readonly List<Item> _items = [];
    private int[] _values = [];
    private byte[] _taken = [];
    private int _bytesPerItem;
    private long _work;

    /// <summary>The largest number of cells that was asked for.</summary>
    public int Capacity { get; private set; }

    /// <summary>The greatest value of pieces that take no more than some cells.</summary>
    public int ValueOf(int cells) => _values[cells];

    /// <summary>The values from no cell up to the capacity.</summary>
    public ReadOnlySpan<int> Values => _values.AsSpan(0, Capacity + 1);

    /// <summary>Fills the table; pieces of no value or without room are left out. False where canceled: then it must not be read.</summary>
    public bool Fill(ReadOnlySpan<int> sizes, ReadOnlySpan<int> values, ReadOnlySpan<int> counts, int capacity, SearchMeter meter)
    {
        Capacity = capacity;
        _work = 0;
        _items.Clear();
        for (var type = 0; type < sizes.Length; type++)
        {
            if (values[type] <= 0 || counts[type] <= 0 || sizes[type] > capacity)
                continue;
            var most = sizes[type] == 0 ? counts[type] : Math.Min(counts[type], capacity / sizes[type]);
            foreach (var taken in BinarySplit.Of(most))
                _items.Add(new(type, taken, sizes[type] * taken, values[type] * taken));
        }
        _bytesPerItem = capacity / Lanes + 1;
        if (_values.Length < capacity + 1)
            _values = new int[capacity + 1];
        else
            Array.Clear(_values, 0, capacity + 1);
        if (_taken.Length < _items.Count * _bytesPerItem)
            _taken = new byte[_items.Count * _bytesPerItem];
        else
            Array.Clear(_taken, 0, _items.Count * _bytesPerItem);
        for (var i = 0; i < _items.Count && !meter.IsCanceled; i++)
            Add(_items[i], _taken.AsSpan(i * _bytesPerItem, _bytesPerItem));
        meter.CountCells(_work);
        return !meter.IsCanceled;
    }

    /// <summary>Adds to <paramref name="counts"/> the pieces that give the greatest value in some cells.</summary>
    public void Trace(int cells, Span<int> counts)
    {
        for (var i = _items.Count - 1; i >= 0; i--)
        {
            var fromEnd = Capacity - cells;
            if ((_taken[i * _bytesPerItem + fromEnd / Lanes] >> (Lanes - 1 - fromEnd % Lanes) & 1) == 0)
                continue;
            counts[_items[i].Type] += _items[i].Count;
            cells -= _items[i].Size;
        }
    }

    /// <summary>Takes an item where it is worth it, from the greatest capacity down, so that it is taken once.</summary>
    private void Add(Item item, Span<byte> taken)
    {
        _work += Capacity + 1 - item.Size;
        ref var values = ref MemoryMarshal.GetArrayDataReference(_values);
        ref var bits = ref MemoryMarshal.GetReference(taken);
        // Values are scaled so that no sum can overflow, and checks would take longer than the sums.
        unchecked
        {
            var value = Vector256.Create(item.Value);
            var (end, block) = (Capacity + 1, 0);
            for (var least = item.Size + Lanes; end >= least; end -= Lanes, block++)
            {
                var at = (nuint)(uint)(end - Lanes);
                var without = Vector256.LoadUnsafe(ref values, at);
                var with = Vector256.LoadUnsafe(ref values, at - (nuint)(uint)item.Size) + value;
                Vector256.Max(with, without).StoreUnsafe(ref values, at);
                Unsafe.Add(ref bits, block) = (byte)Vector256.GreaterThan(with, without).ExtractMostSignificantBits();
            }
            for (var cell = end - 1; cell >= item.Size; cell--)
            {
                ref var without = ref Unsafe.Add(ref values, cell);
                var with = Unsafe.Add(ref values, cell - item.Size) + item.Value;
                if (with <= without)
                    continue;
                without = with;
                Unsafe.Add(ref bits, block) |= (byte)(1 << (Lanes - 1 - (Capacity - cell) % Lanes));
            }
        }
    }

    private readonly record struct Item(int Type, int Count, int Size, int Value);
}
