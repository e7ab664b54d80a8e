using SawEngine.Solvers.Nesting;

namespace SawEngine.Solvers.Tests.Nesting;

public sealed class FirstLongEnoughTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(8)]
    [InlineData(37)]
    public void Finds_what_a_look_at_all_finds(int count)
    {
        var random = new SplitMix(1);
        var lengths = Enumerable.Range(0, count).Select(_ => (long?)(random.Next() % 20)).ToArray();
        var tree = new FirstLongEnough([.. lengths.Select(length => length!.Value)]);
        for (var change = 0; change < 50; change++)
        {
            for (var from = 0; from <= count; from++)
            {
                for (var atLeast = 0L; atLeast <= 21; atLeast++)
                {
                    var looked = Array.FindIndex(lengths, from, length => length >= atLeast);
                    Assert.Equal(looked < 0 ? null : (int?)looked, tree.First(atLeast, from));
                }
            }
            var place = (int)(random.Next() % (ulong)count);
            lengths[place] = random.Next() % 3 == 0 ? null : (long)(random.Next() % 20);
            tree.Set(place, lengths[place]);
        }
    }

    [Fact]
    public void Of_no_lengths_none_is_found() => Assert.Null(new FirstLongEnough([]).First(0, 0));
}
