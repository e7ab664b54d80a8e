namespace SawEngine.Core.CuttingData;

/// <summary>The numbers behind cutting data that belong neither to a grade nor to a saw.</summary>
public sealed record CuttingParameters
{
    private const string Practice = "common practice, no source";
    private const string Memory = "from memory";
    private const string Handbook = "Machinery's Handbook, 31st ed., p. 1245";

    /// <summary>The usual values.</summary>
    public static readonly CuttingParameters Default = new();

    /// <summary>Fewest mean teeth in the work. The three-tooth rule: Bacon, Introduction to Machining, OpenWA Pressbooks 7.4.</summary>
    public decimal FewestMeanTeeth { get; init; } = 3m;

    /// <summary>Most mean teeth in the work. Common practice, no source.</summary>
    public decimal MostMeanTeeth { get; init; } = 24m;

    /// <summary>Fewest mean teeth wanted in solids. Common practice, no source.</summary>
    public decimal FewestWantedTeeth { get; init; } = 6m;

    /// <summary>Most mean teeth wanted in solids. Common practice, no source.</summary>
    public decimal MostWantedTeeth { get; init; } = 12m;

    /// <summary>Teeth in the shortest run below which the feed is reduced and a warning is given. Three-tooth rule, as above.</summary>
    public decimal FewestFullyLoadedTeeth { get; init; } = 3m;

    /// <summary>Teeth in the shortest run (in solids: in the mean width) below which a blade is refused. From memory; a manual of the US Navy (NAVEDTRA 14119) states two.</summary>
    public decimal FewestTeeth { get; init; } = 1m;

    /// <summary>
    /// Heaviest load per tooth in mm. Band saw chips are 5 to 50 µm thick (Sarwar, Haider, Persson, introduction); within that range from memory:
    /// with it single tubes come to 0.6 to 0.8 and single shapes to 0.5 to 0.75 of a solid's rate, as is usual in structural steel.
    /// </summary>
    public decimal LargestToothLoadMillimeters { get; init; } = 0.030m;

    /// <summary>Lightest load per tooth in mm in work-hardening grades: lower end of the same published range, where a tooth begins to rub.</summary>
    public decimal SmallestToothLoadMillimeters { get; init; } = 0.005m;

    /// <summary>
    /// How far the lightest load may lift the cutting rate over the grade's: to about the upper end of its usual band, whose middle is the grade's rate. From memory.
    /// </summary>
    public decimal LargestRateShare { get; init; } = 1.4m;

    /// <summary>Area of a gullet as a share of the pitch squared. From memory: gullets about 0.35 to 0.4 pitches deep.</summary>
    public decimal GulletShare { get; init; } = 0.2m;

    /// <summary>Room that a loose chip takes over its solid volume. From memory.</summary>
    public decimal ChipPacking { get; init; } = 6m;

    /// <summary>Thin-chip factor C on the unit power. From memory: feed factors of Machinery's Handbook and Kienzle's exponent give 1.4 to 2.4.</summary>
    public decimal ThinChipFactor { get; init; } = 2m;

    /// <summary>Wear factor W on the unit power in normal work, 1.1 to 1.3. From memory.</summary>
    public decimal WearFactor { get; init; } = 1.2m;

    /// <summary>Speed factor of dry cutting: reduce 30 to 50 %, Machinery's Handbook, 31st ed., p. 1245.</summary>
    public decimal DryFactor { get; init; } = 0.6m;

    /// <summary>Speed factor of a carbon-steel blade: reduce 50 %, Machinery's Handbook, 31st ed., p. 1245.</summary>
    public decimal CarbonSteelFactor { get; init; } = 0.5m;

    /// <summary>Speed factor of carbide teeth in nickel and titanium alloys and tool steel, 1.3 to 2. From memory.</summary>
    public decimal CarbideFactor { get; init; } = 1.3m;

    /// <summary>Factor on the highest cutting rate of solids in a bundle, 0.7 to 0.85. From memory.</summary>
    public decimal SolidBundleFactor { get; init; } = 0.8m;

    /// <summary>Factor on the highest cutting rate of hollow and structural sections in a bundle, 0.5 to 0.65 of a solid's. From memory.</summary>
    public decimal HollowBundleFactor { get; init; } = 0.6m;

    /// <summary>How many times as far out of square a blade at the end of its life cuts, in proportion between. From memory.</summary>
    public decimal WornSquarenessFactor { get; init; } = 2m;

    /// <summary>Area over which a new blade is broken in, in square meters. From memory: the first 50 to 100 in2 of hard grades, the first few bars of soft ones.</summary>
    public decimal BreakInAreaSquareMeters { get; init; } = 0.06m;

    /// <summary>What is left of the blade feed while a blade is broken in. From memory.</summary>
    public decimal BreakInFeedFactor { get; init; } = 0.5m;

    /// <summary>Share of the travel that a run must last to count as the shortest: toes and tangents do not. Own choice.</summary>
    public decimal ShortestRunTravelShare { get; init; } = 0.05m;

    /// <summary>Every value with its source, in the order above.</summary>
    public IReadOnlyList<DefaultValue> Values =>
    [
        new("fewestMeanTeeth", FewestMeanTeeth, "", "three-tooth rule, Bacon, Introduction to Machining, OpenWA Pressbooks 7.4", Confidence.Published),
        new("mostMeanTeeth", MostMeanTeeth, "", Practice, Confidence.CommonPractice),
        new("fewestWantedTeeth", FewestWantedTeeth, "", Practice, Confidence.CommonPractice),
        new("mostWantedTeeth", MostWantedTeeth, "", Practice, Confidence.CommonPractice),
        new("fewestFullyLoadedTeeth", FewestFullyLoadedTeeth, "", "three-tooth rule, Bacon, Introduction to Machining, OpenWA Pressbooks 7.4", Confidence.Published),
        new("fewestTeeth", FewestTeeth, "", Memory, Confidence.FromMemory),
        new("largestToothLoadMm", LargestToothLoadMillimeters, "mm", "within the 5 to 50 µm of Sarwar, Haider, Persson; the value from memory", Confidence.FromMemory),
        new("smallestToothLoadMm", SmallestToothLoadMillimeters, "mm", "lower end of the 5 to 50 µm of Sarwar, Haider, Persson", Confidence.Published),
        new("largestRateShare", LargestRateShare, "", Memory, Confidence.FromMemory),
        new("gulletShare", GulletShare, "", Memory, Confidence.FromMemory),
        new("chipPacking", ChipPacking, "", Memory, Confidence.FromMemory),
        new("thinChipFactor", ThinChipFactor, "", Memory, Confidence.FromMemory),
        new("wearFactor", WearFactor, "", Memory, Confidence.FromMemory),
        new("dryFactor", DryFactor, "", Handbook + ", reduce 30 to 50 %", Confidence.Secondary),
        new("carbonSteelFactor", CarbonSteelFactor, "", Handbook + ", reduce 50 %", Confidence.Secondary),
        new("carbideFactor", CarbideFactor, "", Memory, Confidence.FromMemory),
        new("solidBundleFactor", SolidBundleFactor, "", Memory, Confidence.FromMemory),
        new("hollowBundleFactor", HollowBundleFactor, "", Memory, Confidence.FromMemory),
        new("wornSquarenessFactor", WornSquarenessFactor, "", Memory, Confidence.FromMemory),
        new("breakInAreaM2", BreakInAreaSquareMeters, "m2", "the first 50 to 100 in2; " + Memory, Confidence.FromMemory),
        new("breakInFeedFactor", BreakInFeedFactor, "", Memory, Confidence.FromMemory),
        new("shortestRunTravelShare", ShortestRunTravelShare, "", "own choice", Confidence.FromMemory),
    ];

    /// <summary>Factor on the highest cutting rate of a bundle.</summary>
    internal decimal BundleFactor(bool isSolid) => isSolid ? SolidBundleFactor : HollowBundleFactor;
}
