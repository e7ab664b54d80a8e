using System.Numerics;

namespace SawEngine.Solvers.Nesting.Proof;

/// <summary>Counts of the pieces of all types in one number: a field for each type, the first type highest, with a guard bit above each count.</summary>
internal sealed class PackedCounts
{
    private const int Bits = 128;

    private readonly int[] _shifts;
    private readonly int[] _typeAt = new int[Bits];
    private readonly UInt128[] _fields;
    private readonly UInt128 _guards;

    private PackedCounts(IReadOnlyList<int> most)
    {
        (_shifts, _fields) = (new int[most.Count], new UInt128[most.Count]);
        var shift = 0;
        for (var type = most.Count - 1; type >= 0; type--)
        {
            var width = WidthOf(most[type]);
            _shifts[type] = shift;
            _fields[type] = ((UInt128.One << (width - 1)) - 1) << shift;
            _guards |= UInt128.One << (shift + width - 1);
            Array.Fill(_typeAt, type, shift, width);
            shift += width;
        }
    }

    /// <summary>For counts up to the given ones; null where they do not go in.</summary>
    public static PackedCounts? For(IReadOnlyList<int> most) => most.Sum(WidthOf) <= Bits ? new(most) : null;

    public UInt128 Pack(IEnumerable<(int Type, int Count)> runs) =>
        runs.Aggregate(UInt128.Zero, (packed, run) => packed + ((UInt128)(uint)run.Count << _shifts[run.Type]));

    public int[] Unpack(UInt128 packed) => [.. _shifts.Select((_, type) => CountOf(packed, type))];

    /// <summary>The first type of which there is any.</summary>
    public int FirstOf(UInt128 packed) => _typeAt[Bits - 1 - (int)UInt128.LeadingZeroCount(packed)];

    /// <summary>What remains where pieces are taken; false where there are not as many of each type.</summary>
    public bool TryTake(UInt128 from, UInt128 taken, out UInt128 rest)
    {
        var difference = unchecked((from | _guards) - taken);
        rest = difference & ~_guards;
        return (difference & _guards) == _guards;
    }

    /// <summary>What remains where as many pieces are taken as there are, and what those that are missing are worth.</summary>
    public (UInt128 Left, long Missing) TakeThere(UInt128 from, UInt128 taken, long[] values)
    {
        var rest = unchecked((from | _guards) - taken);
        var missing = 0L;
        for (var open = _guards & ~rest; open != 0; open &= open - 1)
        {
            var type = _typeAt[(int)UInt128.TrailingZeroCount(open)];
            missing += values[type] * (CountOf(taken, type) - CountOf(from, type));
            rest &= ~_fields[type];
        }
        return (rest & ~_guards, missing);
    }

    private int CountOf(UInt128 packed, int type) => (int)((packed & _fields[type]) >> _shifts[type]);

    private static int WidthOf(int most) => BitOperations.Log2((uint)Math.Max(1, most)) + 2;
}
