using SawEngine.Core.Quantities;
using SawEngine.Core.Scheduling;

namespace SawEngine.Core.CuttingData;

/// <summary>Cutting data of one cut: how saw and blade are set, what limits them and how long the blade is in the work.</summary>
public sealed record CutData
{
    /// <summary>The blade.</summary>
    public required string BladeId { get; init; }

    /// <summary>Blade speed, rounded to 0.1 m/min, half to even.</summary>
    public required Speed BladeSpeed { get; init; }

    /// <summary>Mean cutting rate, area over cut time, rounded to 0.1 cm2/min, half to even.</summary>
    public required CuttingRate CuttingRate { get; init; }

    /// <summary>Mean blade feed, travel over cut time, in mm/min, rounded to 0.1, half to even.</summary>
    public required decimal BladeFeedMillimetersPerMinute { get; init; }

    /// <summary>What limits the feed over the largest part of the cut time.</summary>
    public required CutLimit LimitedBy { get; init; }

    /// <summary>Teeth in the work.</summary>
    public required TeethInWork TeethInWork { get; init; }

    /// <summary>Highest power that the motor gives during the cut in kilowatts, rounded to 0.01, half to even.</summary>
    public required decimal PowerKilowatts { get; init; }

    /// <summary>Time the blade is in the work in seconds, rounded up to 0.1.</summary>
    public required decimal CutSeconds { get; init; }

    /// <summary>How far the face may be out of square over the blade's way, rounded to 1.27 µm (0.00005 in).</summary>
    public required Length OutOfSquare { get; init; }

    /// <summary>How a new blade is broken in on this cut.</summary>
    public required BreakIn BreakIn { get; init; }

    /// <summary>Area of the cut face, A/cos a, rounded to 0.001 mm2, half to even; the section's area where square.</summary>
    public required Area CutArea { get; init; }

    /// <summary>Area that a new blade of this kind cuts in this grade, in square meters.</summary>
    public required Sourced<decimal> BladeLifeSquareMeters { get; init; }

    /// <summary>Share of a new blade's life that the cut uses.</summary>
    public decimal BladeLifeShare => CutArea.SquareMillimeters / 1_000_000m / BladeLifeSquareMeters.Value;

    /// <summary>That share in billionths of a life, rounded up, as blades are booked.</summary>
    public long BladeLifeBillionths => (long)decimal.Ceiling(BladeLifeShare * ScheduleSaw.FullBladeLife);

    /// <summary>Cuts that a new blade makes; 0 where its life is too short for one.</summary>
    public long CutsPerBlade => BladeLifeBillionths == 0 ? ScheduleSaw.FullBladeLife : ScheduleSaw.FullBladeLife / BladeLifeBillionths;

    /// <summary>Whole cuts that a blade with some share of its life left still makes.</summary>
    public long CutsLeft(decimal remainingLife) =>
        BladeLifeBillionths == 0 ? ScheduleSaw.FullBladeLife : (long)decimal.Floor(remainingLife * ScheduleSaw.FullBladeLife) / BladeLifeBillionths;

    /// <summary>The factors between the grade's reference and these data, in order of use.</summary>
    public required IReadOnlyList<AppliedFactor> Factors { get; init; }

    /// <summary>What should be known about the cut.</summary>
    public required IReadOnlyList<CutWarning> Warnings { get; init; }
}
