using SawEngine.Solvers.Nesting.Afterwards;

namespace SawEngine.Solvers.Tests.Nesting.Afterwards;

public class CutOrderTests
{
    [Fact]
    public void Equal_lengths_are_cut_together_longest_first()
    {
        (long Length, string Line, int Number)[] pieces = [(1200, "b", 1), (3000, "c", 2), (1200, "a", 3), (3000, "c", 4), (1200, "b", 5), (1201, "z", 6)];

        var order = CutOrder.LongestFirst(pieces, piece => piece.Length, piece => piece.Line);

        Assert.Equal([2, 4, 6, 3, 1, 5], order.Select(piece => piece.Number));
    }

    [Fact]
    public void Stop_is_set_once_for_each_length()
    {
        var random = new Random(4);
        var pieces = Enumerable.Range(0, 500).Select(_ => (Length: random.NextInt64(1, 40), Line: $"{random.Next(9)}")).ToList();

        var order = CutOrder.LongestFirst(pieces, piece => piece.Length, piece => piece.Line);

        Assert.Equal(pieces.Order(), order.Order());
        Assert.Equal(pieces.Select(piece => piece.Length).Distinct().Count() - 1, order.Zip(order.Skip(1)).Count(pair => pair.First.Length != pair.Second.Length));
        Assert.Equal(pieces.Distinct().Count() - 1, order.Zip(order.Skip(1)).Count(pair => pair.First != pair.Second));
    }
}
