using SawEngine.Core.CuttingData;
using SawEngine.Core.Grades;
using SawEngine.Core.Orders;

namespace SawEngine.Core.Tests.CuttingData;

public sealed class DryTests
{
    /// <summary>A grade that is cut dry anyway states its speed so; any other loses 40 % (30 to 50 %, Machinery's Handbook, 31st ed., p. 1245).</summary>
    [Theory]
    [InlineData(CoolantUse.Allowed, true)]
    [InlineData(CoolantUse.NotAllowed, false)]
    public void Dry_saw_slows_what_could_be_cut_with_coolant(CoolantUse coolant, bool isSlowed)
    {
        var data = CuttingDataCalculator.For(TestSection.Solid(100m, 100m), Shop.Grade("1045") with { Coolant = coolant }, Shop.Saw() with { Coolant = false }, Shop.Blade(2, 3), EndCut.Square).Data!;
        Assert.Equal(isSlowed, data.Factors.Any(factor => factor is { Code: "dry", Value: 0.6m }));
    }
}
