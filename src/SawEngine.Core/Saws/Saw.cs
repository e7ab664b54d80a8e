using SawEngine.Core.Accuracy;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Saws;

/// <summary>A horizontal production band saw.</summary>
public sealed record Saw
{
    /// <summary>The caller's id.</summary>
    public required string SawId { get; init; }

    /// <summary>The largest sections that it holds.</summary>
    public required SawCapacity Capacity { get; init; }

    /// <summary>How far it swivels and tilts; null for a saw that cuts square only.</summary>
    public MiterRange? MiterRange { get; init; }

    /// <summary>
    /// By how much the blade's right-hand end is lower than its left-hand one, looking along the bar from first to second end, while the head descends upright;
    /// zero for a level blade.
    /// </summary>
    public Angle Cant { get; init; }

    /// <summary>The cut bundles that it clamps; null for a saw that cuts single bars only.</summary>
    public BundleCapacity? Bundle { get; init; }

    /// <summary>Slowest blade speed.</summary>
    public required Speed SlowestBladeSpeed { get; init; }

    /// <summary>Fastest blade speed.</summary>
    public required Speed FastestBladeSpeed { get; init; }

    /// <summary>Blade speed below which the motor gives constant torque, so that its power falls with the speed; null where unknown.</summary>
    public Speed? BaseBladeSpeed { get; init; }

    /// <summary>Diameter of the wheels that the blade runs over; null where unknown.</summary>
    public Length? WheelDiameter { get; init; }

    /// <summary>Rated power of the blade motor in kilowatts.</summary>
    public required decimal MotorPowerKilowatts { get; init; }

    /// <summary>Share of the motor's power that reaches the blade, 0 to 1.</summary>
    public required decimal DriveEfficiency { get; init; }

    /// <summary>Fastest blade feed (descent) in millimeters per minute.</summary>
    public required decimal FastestBladeFeedMillimetersPerMinute { get; init; }

    /// <summary>Stroke of the bar feed; a longer index takes several strokes.</summary>
    public required Length BarFeedStroke { get; init; }

    /// <summary>Heaviest bar, or cut bundle, that the bar feed carries.</summary>
    public required Mass LoadLimit { get; init; }

    /// <summary>Shortest end that it can still hold, measured on the short side of a miter.</summary>
    public required Length Tail { get; init; }

    /// <summary>Shortest piece that it can cut, measured on its short side; zero where none is stated.</summary>
    public Length ShortestPiece { get; init; }

    /// <summary>Longest piece that the outfeed takes; null where none is stated.</summary>
    public Length? LongestPiece { get; init; }

    /// <summary>Thinnest slice or wedge that it may cut between two pieces; zero where none is stated.</summary>
    public Length ThinnestSlice { get; init; }

    /// <summary>Blades that may be mounted, ordered by id.</summary>
    public required IReadOnlyList<Blade> Blades { get; init; }

    /// <summary>The blade that is mounted at the start of the plan; null where unknown.</summary>
    public string? MountedBladeId { get; init; }

    /// <summary>Machine cost of an hour, without labor.</summary>
    public Money MachineCostPerHour { get; init; }

    /// <summary>How exactly it sets lengths and how square it cuts.</summary>
    public required SawAccuracy Accuracy { get; init; }

    /// <summary>Times of its motions and of handling.</summary>
    public required SawTimes Times { get; init; }

    /// <summary>Factor on the cutting rate from the shop's own measurements; 1 where none.</summary>
    public decimal RateFactor { get; init; } = 1m;

    /// <summary>Whether it cuts with coolant.</summary>
    public bool Coolant { get; init; } = true;
}
