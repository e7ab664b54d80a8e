using SawEngine.Core.Scheduling;
using static SawEngine.Core.Tests.Scheduling.ByHand.Edit;

namespace SawEngine.Core.Tests.Scheduling.ByHand;

/// <summary>Blades as individuals: on the saw, on its shelf, taken off and mounted again, and new.</summary>
internal static class BladesByHand
{
    private const long Million = 1_000_000;
    private const long New = ScheduleSaw.FullBladeLife;

    private static readonly ScheduleProblem Problem = new()
    {
        Saws =
        [
            new()
            {
                SawId = "S",
                Windows = [new(0, 1000)],
                InitialState = new("round", "A", "B1"),
                RemainingBladeLife = 300 * Million,
                Shelf = [new("B1", 200 * Million), new("B1", 500 * Million), new("B2", 600 * Million)],
                SetUpTimes = new(Section: 0, GradeGroup: 0, Blade: 10),
            },
        ],
        Jobs =
        [
            Job("J1", "B1", new(20_000, 3, 150 * Million)),
            Job("J2", "B2", new(10_000, 1, 100 * Million)),
            Job("J3", "B1", new(10_000, 1, 40 * Million)),
            Job("J4", "B1", new(30_000, 2, 600 * Million)),
        ],
        Deliveries = [],
    };

    // J1 uses up the 300 in two cuts; the blade with 200 is left with 50, goes to the shelf for J2, and is mounted for J3, which leaves it with 10.
    // No used blade makes a cut of 600, and a new one makes one of them. 60 + 10 + 10 + 60 s of work at 2, five changes of 10 s at 3.
    private static readonly Schedule Good = Of(
        280 + 150,
        Placed("J1", "S", 1, [new("bladeWorn", 40, 50, MountedLife: 200 * Million)], new(0, 40, 2), new(50, 70, 1)),
        Placed("J2", "S", 2, [new("blade", 70, 80, MountedLife: 600 * Million)], new WorkSpan(80, 90, 1)),
        Placed("J3", "S", 3, [new("blade", 90, 100, MountedLife: 50 * Million)], new WorkSpan(100, 110, 1)),
        Placed("J4", "S", 4, [new("bladeWorn", 110, 120, MountedLife: New), new("bladeWorn", 150, 160, MountedLife: New)], new(120, 150, 1), new(160, 190, 1)));

    public static HandCase Case { get; } = new("blades", Problem, Good,
    [
        new("life that no blade has", s => s.SetsUp("J1", new ScheduledSetUp("bladeWorn", 40, 50, MountedLife: 250 * Million)).SetsUp("J3", new ScheduledSetUp("blade", 90, 100, MountedLife: 100 * Million)), ScheduleRule.BladeNotReady),
        new("blade with the life it had before", s => s.SetsUp("J3", new ScheduledSetUp("blade", 90, 100, MountedLife: 200 * Million)), ScheduleRule.BladeNotReady),
        new("life of another kind of blade", s => s.SetsUp("J2", new ScheduledSetUp("blade", 70, 80, MountedLife: 500 * Million)), ScheduleRule.BladeNotReady),
        new("blade that was used up", s => s.SetsUp("J3", new ScheduledSetUp("blade", 90, 100, MountedLife: 0)), ScheduleRule.BladeNotReady, ScheduleRule.BladeWornOut),
        new("blade that does not last", s => s.SetsUp("J4", new("bladeWorn", 110, 120, MountedLife: 500 * Million), new("bladeWorn", 150, 160, MountedLife: New)), ScheduleRule.BladeWornOut),
        new("good blade changed", s => s.SetsUp("J4", new("bladeWorn", 110, 120, MountedLife: New), new("bladeWorn", 120, 130, MountedLife: New), new("bladeWorn", 160, 170, MountedLife: New)).Works("J4", new(130, 160, 1), new(170, 200, 1)), ScheduleRule.SetUpUnneeded),
        Mutant.Of("blade that is not on the shelf", p => p.Saw("S", saw => saw with { Shelf = [.. saw.Shelf.Skip(1)] }), ScheduleRule.BladeNotReady),
    ]);

    private static ScheduleJob Job(string id, string bladeId, StepRun steps) => new()
    {
        JobId = id,
        Options = [new() { SawId = "S", SetUp = new("round", "A", bladeId), Steps = [steps], CostMicrosPerSecond = 2, SetUpCostMicrosPerSecond = 3 }],
    };
}
