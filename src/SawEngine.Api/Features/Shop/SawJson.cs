using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>A horizontal production band saw. It needs an id, capacity, tail and calendar; every other default is the engine's, with its source, and is echoed in the answer.</summary>
public sealed record SawJson
{
    private const double ShortestStroke = 1;

    /// <summary>Id of the saw, unique.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string SawId { get; init; }

    /// <summary>The largest sections that it holds.</summary>
    public required SawCapacityJson Capacity { get; init; }

    /// <summary>How far it swivels; not at all where absent.</summary>
    public MiterRangeJson? MiterRange { get; init; }

    /// <summary>How far it tilts after it has swiveled, for miters in the plane of the height and compound ones; it does not tilt where absent.</summary>
    public TiltRangeJson? TiltRange { get; init; }

    /// <summary>
    /// By how many degrees, at most 3 decimals, the blade's right-hand end is lower than its left-hand one, looking along the bar from first to second end, while the
    /// head descends upright; 0 for a level blade.
    /// </summary>
    [AngleRange(-45, 45)]
    public decimal CantDegrees { get; init; }

    /// <summary>The cut bundles that it clamps; it cuts single bars only where absent.</summary>
    public BundleCapacityJson? Bundle { get; init; }

    /// <summary>Blade speeds.</summary>
    public BladeSpeedRangeJson? BladeSpeedMPerMin { get; init; }

    /// <summary>Blade speed in m/min below which the motor gives constant torque, so that its power falls with the speed; full power at every speed where absent.</summary>
    [Range(1, 10000)]
    public decimal? BaseBladeSpeedMPerMin { get; init; }

    /// <summary>Diameter of the wheels that the blade runs over, in the length unit of the request; its bending stress is not checked where absent.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public decimal? WheelDiameter { get; init; }

    /// <summary>Rated power of the blade motor in kW.</summary>
    [Range(0.01, 1000)]
    public decimal? MotorPowerKw { get; init; }

    /// <summary>Share of the motor's power that reaches the blade.</summary>
    [Range(0.01, 1)]
    public decimal? DriveEfficiency { get; init; }

    /// <summary>Fastest blade feed (descent) in mm/min.</summary>
    [Range(0.1, 100000)]
    public decimal? FastestBladeFeedMmPerMin { get; init; }

    /// <summary>Stroke of the bar feed in the length unit of the request; a longer index takes several strokes.</summary>
    [LengthRange(ShortestStroke, Limits.Length)]
    public decimal? BarFeedStroke { get; init; }

    /// <summary>Heaviest bar or cut bundle that the bar feed carries in kg.</summary>
    [Range(1, 1000000)]
    public decimal? LoadLimitKg { get; init; }

    /// <summary>Shortest end that it can still hold, in the length unit of the request; 0 where it needs none.</summary>
    [LengthRange]
    public required decimal Tail { get; init; }

    /// <summary>Shortest piece that it can cut, on its short side, in the length unit of the request.</summary>
    [LengthRange]
    public decimal ShortestPiece { get; init; }

    /// <summary>Longest piece that the outfeed takes, in the length unit of the request; no limit where absent.</summary>
    [LengthRange(MinimumIsExclusive = true)]
    public decimal? LongestPiece { get; init; }

    /// <summary>Thinnest slice or wedge that it may cut between two pieces, in the length unit of the request.</summary>
    [LengthRange]
    public decimal ThinnestSlice { get; init; }

    /// <summary>Blades that may be mounted; the engine's own set of usual blades where absent.</summary>
    [MinLength(1), MaxLength(PlanLimits.Blades)]
    public IReadOnlyList<string>? BladeIds { get; init; }

    /// <summary>The blade that is mounted at planStart, one of its blades; unknown where absent.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public string? MountedBladeId { get; init; }

    /// <summary>Used blades that lie ready for it, each one of its blades. A schedule mounts one of them, or a new one.</summary>
    [MaxLength(PlanLimits.ShelfBlades)]
    public IReadOnlyList<ShelfBladeJson> Shelf { get; init; } = [];

    /// <summary>Section that it is set up for at planStart; unknown where absent.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? InitialSection { get; init; }

    /// <summary>Group of the grade that it cut last before planStart; unknown where absent.</summary>
    [MinLength(1), MaxLength(Limits.TextLength)]
    public string? InitialGradeGroup { get; init; }

    /// <summary>Angle that it stands at at planStart in degrees, at most 3 decimals; unknown where absent.</summary>
    [AngleRange(-90, 90)]
    public decimal? InitialAngleDegrees { get; init; }

    /// <summary>When it is attended.</summary>
    [MinLength(1), MaxLength(Limits.IdLength)]
    public required string CalendarId { get; init; }

    /// <summary>When it cannot run.</summary>
    [MaxLength(PlanLimits.Downtimes)]
    public IReadOnlyList<DowntimeJson> Downtimes { get; init; } = [];

    /// <summary>When it cannot run, by recurrence rules.</summary>
    [MaxLength(PlanLimits.Recurrences)]
    public IReadOnlyList<MaintenanceJson> Maintenance { get; init; } = [];

    /// <summary>When and how far it may run by itself; never where absent.</summary>
    public UnattendedJson? Unattended { get; init; }

    /// <summary>Machine cost of an hour, without labor, in the request's currency.</summary>
    [CostRange(100_000)]
    public decimal MachineCostPerHour { get; init; }

    /// <summary>Factor on the cutting rate from the shop's own measurements.</summary>
    [Range(0.01, 100)]
    public decimal? RateFactor { get; init; }

    /// <summary>Whether it cuts with coolant.</summary>
    public bool Coolant { get; init; } = true;

    /// <summary>How exactly it sets lengths and how square it cuts.</summary>
    public SawAccuracyJson Accuracy { get; init; } = new();

    /// <summary>Times of its motions, of handling and of set-ups.</summary>
    public SawTimesJson Times { get; init; } = new();

    /// <summary>Changes between two jobs that take another time than the usual one, by what was before and after.</summary>
    [MaxLength(PlanLimits.SetUpChanges)]
    public IReadOnlyList<SetUpChangeJson> SetUpChanges { get; init; } = [];

    /// <summary>Parts of a set-up that are done beside the others, from the moment when the saw is free; the others follow one another.</summary>
    [MaxLength(4)]
    public IReadOnlyList<SetUpKind> SetUpBeside { get; init; } = [];
}
