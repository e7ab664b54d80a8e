using SawEngine.Core.Accuracy;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Saws;

/// <summary>
/// What a saw is taken to be where the request does not say: everything but its id, capacity, tail and calendar.
/// No value of a saw is published independently; each is common practice or from memory and is meant to be replaced by the saw's own.
/// </summary>
public sealed record SawDefaults
{
    /// <summary>How many saws an operator attends at a time; common practice, no source.</summary>
    public const int SawsOfOperator = 2;

    private const string Practice = "common practice, no source";
    private const string Memory = "from memory";

    /// <summary>Rated motor power in kilowatts by the largest capacity in millimeters up to which it is usual.</summary>
    private static readonly (decimal UpTo, decimal Kilowatts)[] MotorPowers =
        [(200m, 1.1m), (300m, 2.2m), (450m, 4.0m), (650m, 5.5m), (decimal.MaxValue, 7.5m)];

    private SawDefaults(IReadOnlyList<DefaultValue> values) => Values = values;

    /// <summary>Every default in the order of the members of a saw.</summary>
    public IReadOnlyList<DefaultValue> Values { get; }

    /// <summary>Slowest blade speed.</summary>
    public Speed SlowestBladeSpeed => new(this["bladeSpeedMPerMin.min"]);

    /// <summary>Fastest blade speed.</summary>
    public Speed FastestBladeSpeed => new(this["bladeSpeedMPerMin.max"]);

    /// <summary>Rated power of the blade motor in kilowatts.</summary>
    public decimal MotorPowerKilowatts => this["motorPowerKw"];

    /// <summary>Share of the motor's power that reaches the blade.</summary>
    public decimal DriveEfficiency => this["driveEfficiency"];

    /// <summary>Fastest blade feed in millimeters per minute.</summary>
    public decimal FastestBladeFeedMillimetersPerMinute => this["fastestBladeFeedMmPerMin"];

    /// <summary>Stroke of the bar feed.</summary>
    public Length BarFeedStroke => Length.FromMillimeters(this["barFeedStroke"]);

    /// <summary>Heaviest bar that the bar feed carries.</summary>
    public Mass LoadLimit => new(this["loadLimitKg"]);

    /// <summary>Factor on the cutting rate.</summary>
    public decimal RateFactor => this["rateFactor"];

    /// <summary>How exactly it sets lengths and how square it cuts.</summary>
    public SawAccuracy Accuracy => new()
    {
        IndexErrorPerStroke = Length.FromMillimeters(this["accuracy.indexErrorPerStroke"]),
        KerfError = Length.FromMillimeters(this["accuracy.kerfError"]),
        Squareness = this["accuracy.squareness"],
    };

    /// <summary>Times of motions, handling and set-ups.</summary>
    public SawTimes Times => new()
    {
        LoadSecondsPerBar = this["times.loadSecondsPerBar"],
        IndexSecondsPerStroke = this["times.indexSecondsPerStroke"],
        ClampSecondsPerCut = this["times.clampSecondsPerCut"],
        ApproachSecondsPerCut = this["times.approachSecondsPerCut"],
        SwivelSeconds = this["times.swivelSeconds"],
        UnloadSecondsPerPiece = this["times.unloadSecondsPerPiece"],
        RemainderSecondsPerBar = this["times.remainderSecondsPerBar"],
        SectionSetUpSeconds = this["times.sectionSetUpSeconds"],
        BladeChangeSeconds = this["times.bladeChangeSeconds"],
        GradeGroupSetUpSeconds = this["times.gradeGroupSetUpSeconds"],
    };

    private decimal this[string name] => Values.First(value => value.Name == name).Value;

    /// <summary>The defaults of a saw of this capacity.</summary>
    public static SawDefaults For(SawCapacity capacity) => new(
    [
        new("bladeSpeedMPerMin.min", 18m, "m/min", "60 to 500 ft/min on production saws for steels; " + Practice, Confidence.CommonPractice),
        new("bladeSpeedMPerMin.max", 120m, "m/min", "most horizontal production saws end at about 120 m/min; " + Memory, Confidence.FromMemory),
        new("motorPowerKw", MotorPowerOf(capacity), "kW", "usual motor by capacity; " + Practice, Confidence.CommonPractice),
        new("driveEfficiency", 0.75m, "", "worm or helical gear 0.70 to 0.80; " + Memory, Confidence.FromMemory),
        new("fastestBladeFeedMmPerMin", 1000m, "mm/min", Memory, Confidence.FromMemory),
        new("barFeedStroke", 500m, "mm", Memory, Confidence.FromMemory),
        new("loadLimitKg", LoadLimitOf(capacity), "kg", "two bars of 6 m of the largest solid round in steel, on whole 100 kg, at least 500 kg; " + Memory, Confidence.FromMemory),
        new("rateFactor", 1m, "", "no measurements of the shop", Confidence.Computed),
        new("accuracy.indexErrorPerStroke", 0.05m, "mm", "a bar feed with position feedback sets within 0.05 mm (0.002 in); " + Practice, Confidence.CommonPractice),
        new("accuracy.kerfError", 0.05m, "mm", Memory, Confidence.FromMemory),
        new("accuracy.squareness", 0.003m, "", "0.3 % of the height as an acceptance figure, 0.2 to 0.4 % typical; " + Memory, Confidence.FromMemory),
        new("times.loadSecondsPerBar", 240m, "s", "crane 3 to 6 min, roller table 1 to 2 min; " + Memory, Confidence.FromMemory),
        new("times.indexSecondsPerStroke", 10m, "s", AutomaticCycle, Confidence.FromMemory),
        new("times.clampSecondsPerCut", 4m, "s", AutomaticCycle, Confidence.FromMemory),
        new("times.approachSecondsPerCut", 10m, "s", AutomaticCycle, Confidence.FromMemory),
        new("times.swivelSeconds", 30m, "s", Memory, Confidence.FromMemory),
        new("times.unloadSecondsPerPiece", 36m, "s", "remove, deburr, mark and stack 0.2 to 1.0 min; " + Memory, Confidence.FromMemory),
        new("times.remainderSecondsPerBar", 60m, "s", Memory, Confidence.FromMemory),
        new("times.sectionSetUpSeconds", 600m, "s", "set-up per job 5 to 15 min; " + Memory, Confidence.FromMemory),
        new("times.bladeChangeSeconds", 300m, "s", "older or large saw with tension and tracking 5 to 15 min, a modern one 2 to 3 min; " + Memory, Confidence.FromMemory),
        new("times.gradeGroupSetUpSeconds", 300m, "s", Memory, Confidence.FromMemory),
    ]);

    private const string AutomaticCycle = "index, clamp, approach and retract together 0.2 to 0.6 min on an automatic saw; from memory";

    private static decimal MotorPowerOf(SawCapacity capacity) =>
        MotorPowers.First(power => capacity.Largest.Millimeters <= power.UpTo).Kilowatts;

    /// <summary>Two bars of 6 m of the largest solid round in steel: 2 · 6 m · 7850 kg/m3 · d² pi/4, up to whole 100 kg, from 500 to 20 000 kg.</summary>
    private static decimal LoadLimitOf(SawCapacity capacity)
    {
        var diameter = Math.Min(capacity.Round.Meters, 10m);
        var mass = 2m * 6m * 7850m * diameter * diameter * 0.785398m;
        return Math.Clamp(decimal.Ceiling(mass / 100m) * 100m, 500m, 20_000m);
    }
}
