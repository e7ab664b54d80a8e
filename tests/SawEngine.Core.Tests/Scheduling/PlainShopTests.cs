using SawEngine.Core.Scheduling;
using SawEngine.Tests.Scheduling;

namespace SawEngine.Core.Tests.Scheduling;

/// <summary>The verifier against schedules that are clean by the way they are made, with everything in them.</summary>
public class PlainShopTests
{
    [Fact]
    public void Schedules_made_second_by_second_are_clean()
    {
        var uses = ScheduleUses.All.ToDictionary(use => use, _ => 0);
        for (var seed = 0; seed < 600; seed++)
        {
            var problem = RandomShop.Of(seed);
            var schedule = PlainShop.Schedule(problem, new(seed));
            Assert.Equal([], ScheduleVerifier.Verify(problem, schedule).Select(violation => $"seed {seed}: {violation.Code}: {violation.Detail}"));
            foreach (var use in ScheduleUses.Of(problem, schedule))
                uses[use]++;
        }
        Assert.All(uses, use => Assert.True(use.Value >= 4, $"{use.Key}: in {use.Value} schedules only"));
    }
}
