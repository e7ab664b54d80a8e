using SawEngine.Core.Scheduling;
using SawEngine.Core.SetUps;

namespace SawEngine.Core.Tests.SetUps;

public class SetUpChangesTests
{
    private static readonly SetUpTimes Times = new(Section: 300, GradeGroup: 0, Blade: 0)
    {
        SectionChanges = new([new("round", "tube", 60), new("tube", "round", 90), new(null, "tube", 10), new("round", "tube", 5)]),
    };

    [Theory]
    [InlineData("round", "tube", 60)]
    [InlineData("tube", "round", 90)]
    [InlineData(null, "tube", 10)]
    [InlineData(null, "round", 300)]
    [InlineData("flat", "tube", 300)]
    [InlineData("tube", "tube", 0)]
    public void Change_takes_the_time_of_its_pair_or_the_usual_one(string? from, string to, long seconds) =>
        Assert.Equal(seconds, SetUpRules.Seconds(new(from, null, null), new(to, null, null), Times));

    // By hand: the tube follows the round and is set up in 60 s, not in 300.
    [Theory]
    [InlineData(60, new string[0])]
    [InlineData(300, new[] { ScheduleRule.SetUpDuration })]
    public void Verifier_minds_the_time_of_the_pair(long seconds, string[] codes)
    {
        var problem = new ScheduleProblem
        {
            Saws = [new() { SawId = "S", Windows = [new(0, 1000)], InitialState = new("round", null, null), SetUpTimes = Times }],
            Jobs = [new() { JobId = "J", Options = [new() { SawId = "S", SetUp = new("tube", null, null), Steps = [new(1000, 1)] }] }],
            Deliveries = [],
            MakespanCostMicrosPerSecond = 2,
        };
        var schedule = new Schedule
        {
            Jobs = [new() { JobId = "J", SawId = "S", Sequence = 1, SetUps = [new("section", 0, seconds)], Work = [new(seconds, seconds + 1, 1)] }],
            Unscheduled = [],
            CostMicros = 2 * (seconds + 1),
            BoundMicros = 0,
            Rule = "by hand",
        };
        Assert.Equal(codes, ScheduleVerifier.Verify(problem, schedule).Select(violation => violation.Code));
    }
}
