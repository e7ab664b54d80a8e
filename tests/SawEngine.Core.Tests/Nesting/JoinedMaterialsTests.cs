using SawEngine.Core.Nesting;

namespace SawEngine.Core.Tests.Nesting;

public class JoinedMaterialsTests
{
    [Fact]
    public void Links_join_in_chains_and_the_first_stands_for_all()
    {
        var joined = JoinedMaterials.Of(["a", "b", "c", "d", "e"], [("d", "b"), ("e", "d"), ("b", "b")]);

        Assert.Equal([("a", "a"), ("b", "b"), ("c", "c"), ("d", "b"), ("e", "b")], joined.Select(material => (material.Key, material.Value)).Order());
    }

    /// <summary>Against the sets that follow from all links by repetition.</summary>
    [Fact]
    public void Random_links_join_what_they_reach()
    {
        for (var seed = 0; seed < 200; seed++)
        {
            var random = new Random(seed);
            var links = Enumerable.Range(0, random.Next(12)).Select(_ => (random.Next(12), random.Next(12))).ToList();
            var expected = Enumerable.Range(0, 12).ToArray();
            for (var round = 0; round < 12; round++)
            {
                foreach (var (one, other) in links)
                    expected[one] = expected[other] = Math.Min(expected[one], expected[other]);
            }

            Assert.Equal(expected, JoinedMaterials.Of(Enumerable.Range(0, 12), links).OrderBy(material => material.Key).Select(material => material.Value));
        }
    }
}
