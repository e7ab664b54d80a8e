using SawEngine.Tests.Nesting;

namespace SawEngine.Solvers.Tests.Nesting;

public class NestPropertyTests
{
    [Fact]
    public void Nests_of_random_problems_have_all_properties()
    {
        var compared = new Dictionary<string, int>();
        for (var seed = 0; seed < 500; seed++)
            Assert.Equal([], NestProperties.Faults(seed, compared).Select(fault => $"seed {seed}: {fault}"));
        // Properties are worth something only where they had something to compare.
        foreach (var property in new[] { "scaled", "more stock", "other effort", "canceled" })
            Assert.True(compared[property] > 100, $"{property}: {compared[property]} compared");
    }
}
