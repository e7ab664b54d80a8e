using SawEngine.Core.Scheduling;
using static SawEngine.Core.Tests.Scheduling.ByHand.Edit;

namespace SawEngine.Core.Tests.Scheduling.ByHand;

/// <summary>Two cranes, a saw that one reaches, one that both reach and that has an operator, and one that none reaches.</summary>
internal static class CranesByHand
{
    private static readonly ScheduleProblem Problem = new()
    {
        Saws = [Saw("S1"), Saw("S2"), Saw("S3")],
        Jobs =
        [
            Job("J1", "S1", new(20_000, 1, 0, StepKind.CraneLoad), new(10_000, 2), new(20_000, 1, 0, StepKind.CraneLoad), new(10_000, 1)),
            Job("J2", "S2", new(15_000, 1, 0, StepKind.CraneLoad), new(10_000, 1)),
            Job("J3", "S2", new(15_000, 1, 0, StepKind.CraneLoad), new(10_000, 1)),
            Job("J4", "S3", new(20_000, 1, 0, StepKind.CraneLoad), new(10_000, 1)),
        ],
        Deliveries = [],
        Operators = [new("O1", [new(0, 300)], ["S2"], 1)],
        Cranes = [new("C1", ["S1", "S2"]), new("C2", ["S2"])],
    };

    // C1 loads S1 to 20 and from 40 to 60, and S2 between. 70 + 25 + 25 + 30 s of work at 2.
    private static readonly Schedule Good = Of(
        300,
        Placed("J1", "S1", 1, [], new(0, 20, 1, null, "C1"), new(20, 40, 2), new(40, 60, 1, null, "C1"), new(60, 70, 1)),
        Placed("J2", "S2", 1, [], new(0, 15, 1, "O1", "C2"), new(15, 25, 1)),
        Placed("J3", "S2", 2, [], new(25, 40, 1, "O1", "C1"), new(40, 50, 1)),
        Placed("J4", "S3", 1, [], new WorkSpan(0, 30, 2)));

    public static HandCase Case { get; } = new("cranes", Problem, Good,
    [
        new("load without a crane", s => s.Works("J2", new(0, 15, 1, "O1"), new(15, 25, 1)), ScheduleRule.CraneMissing),
        new("crane that does not reach the saw", s => s.Works("J1", new(0, 20, 1, null, "C2"), new(20, 40, 2), new(40, 60, 1, null, "C1"), new(60, 70, 1)), ScheduleRule.CraneMissing),
        new("crane where none is", s => s.Works("J4", new WorkSpan(0, 30, 2, null, "C1")), ScheduleRule.CraneUnneeded),
        new("crane for a cut", s => s.Works("J2", new(0, 15, 1, "O1", "C2"), new(15, 25, 1, null, "C2")), ScheduleRule.CraneUnneeded),
        new("two loads at a time", s => s.Works("J3", new(30, 45, 1, "O1", "C1"), new(45, 55, 1)), ScheduleRule.CraneBusy),
        new("load and cut in one span", s => s.Works("J2", new WorkSpan(0, 25, 2, "O1", "C2")), ScheduleRule.CraneLoadNotAlone),
        new("load by nobody", s => s.Works("J2", new(0, 15, 1, null, "C2"), new(15, 25, 1)), ScheduleRule.OperatorMissing),
        new("operator of another saw", s => s.Works("J1", new(0, 20, 1, "O1", "C1"), new(20, 40, 2), new(40, 60, 1, null, "C1"), new(60, 70, 1)), ScheduleRule.OperatorUnneeded),
        new("work that stops for nothing", s => s.Works("J1", new(0, 20, 1, null, "C1"), new(20, 30, 1), new(30, 40, 1), new(40, 60, 1, null, "C1"), new(60, 70, 1)), ScheduleRule.WorkSplit),
        new("stop for a crane where none is", s => s.Works("J4", new(0, 20, 1), new(25, 35, 1)), ScheduleRule.WorkSplit),
    ]);

    private static ScheduleSaw Saw(string id) => new() { SawId = id, Windows = [new(0, 300)], InitialState = new("round", "A", "B"), SetUpTimes = new(0, 0, 0) };

    private static ScheduleJob Job(string id, string sawId, params StepRun[] steps) => new()
    {
        JobId = id,
        Options = [new() { SawId = sawId, SetUp = new("round", "A", "B"), Steps = steps, CostMicrosPerSecond = 2 }],
    };
}
