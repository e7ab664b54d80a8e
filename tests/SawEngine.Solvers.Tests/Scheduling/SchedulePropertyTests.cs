using SawEngine.Tests.Scheduling;

namespace SawEngine.Solvers.Tests.Scheduling;

public class SchedulePropertyTests
{
    [Fact]
    public void Schedules_of_random_problems_have_all_properties()
    {
        var compared = new Dictionary<string, int>();
        var faults = Enumerable.Range(0, 600).SelectMany(seed => ScheduleProperties.Faults(seed, ShopFeatures.All, compared).Select(fault => $"seed {seed}: {fault}")).ToList();
        Assert.Equal([], faults);
        // Properties are worth something only where they had something to compare.
        foreach (var property in ScheduleUses.All.Concat(["Quick", "Standard", "Thorough", "other effort", "canceled", "no dearer than by hand"]))
            Assert.True(compared.GetValueOrDefault(property) >= 4, $"{property}: {compared.GetValueOrDefault(property)} compared");
        Assert.True(compared["jobs scheduled"] > compared["jobs left out"], $"{compared["jobs left out"]} jobs left out, {compared["jobs scheduled"]} scheduled: too hard to show anything");
    }
}
