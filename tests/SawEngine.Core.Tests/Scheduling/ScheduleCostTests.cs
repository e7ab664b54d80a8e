using SawEngine.Core.Scheduling;

namespace SawEngine.Core.Tests.Scheduling;

public class ScheduleCostTests
{
    // By hand: two deliveries of one job, each a second late at 5000 an hour: 1.38 each, rounded down each.
    [Fact]
    public void Lateness_is_rounded_down_once_for_each_delivery()
    {
        var problem = HandSchedule.Problem with
        {
            Deliveries = [new("D1", 2949, 5000, ["J4"]), new("D2", 2949, 5000, ["J4"]), new("D3", null, 5000, ["J4"])],
        };
        var busy = 3402 * 1000;
        Assert.Equal(busy + 2, ScheduleCost.Micros(problem, HandSchedule.Good.Jobs));
    }

    [Fact]
    public void Delivery_is_finished_with_the_last_of_its_scheduled_jobs() =>
        Assert.Equal(5_502_000, ScheduleCost.Micros(HandSchedule.Problem, HandSchedule.Good.Jobs));

    [Fact]
    public void Delivery_that_is_finished_at_the_promised_second_is_not_late()
    {
        var problem = HandSchedule.Problem with { Deliveries = [new("D", 2950, long.MaxValue, ["J4"])] };
        Assert.Equal(3_402_000, ScheduleCost.Micros(problem, HandSchedule.Good.Jobs));
    }

    [Fact]
    public void Long_and_short_arithmetic_agree() => Assert.Equal(
        (Int128)long.MaxValue * 7200 / 3600, ScheduleCost.Tardiness(long.MaxValue, 7200));

    [Fact]
    public void Cost_beyond_the_range_is_held_at_its_end()
    {
        var problem = HandSchedule.Problem with { Deliveries = [new("D", -1_000_000, long.MaxValue, ["J4"])] };
        Assert.Equal(long.MaxValue, ScheduleCost.Micros(problem, HandSchedule.Good.Jobs));
    }
}
