using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.ReferenceData;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.CuttingData;

namespace SawEngine.Api.Features.CuttingData;

/// <summary>How a saw makes a cut.</summary>
public sealed record CutResultJson
{
    /// <summary>Cut.</summary>
    public required string CutId { get; init; }

    /// <summary>Saw.</summary>
    public required string SawId { get; init; }

    /// <summary>Place among the saws, or saws and blades, that can make the cut, by time, then by id; 1 is the fastest.</summary>
    [Range(1, PlanLimits.Saws * PlanLimits.Blades)]
    public required int Rank { get; init; }

    /// <summary>Designation of the section.</summary>
    public required string Section { get; init; }

    /// <summary>Designation of the grade.</summary>
    public required string Grade { get; init; }

    /// <summary>Bars that are cut together, to which area and times belong; absent for one.</summary>
    public CutBundleJson? Bundle { get; init; }

    /// <summary>Its blade.</summary>
    public required string BladeId { get; init; }

    /// <summary>Teeth per inch of the blade: one number for a constant pitch, or the coarsest and the finest of a variable one.</summary>
    [Range(0.1, 50)]
    public required IReadOnlyList<decimal> TeethPerInch { get; init; }

    /// <summary>Width of material that the blade turns to chips.</summary>
    [LengthRange]
    public required decimal Kerf { get; init; }

    /// <summary>Quarter turns clockwise, looking along the bar from first to second end, by which the section lies turned in the vise.</summary>
    [Range(0, 3)]
    public required int QuarterTurns { get; init; }

    /// <summary>Blade speed in m/min.</summary>
    [Range(0, int.MaxValue)]
    public required decimal BladeSpeedMPerMin { get; init; }

    /// <summary>Blade speed in ft/min; with inches only.</summary>
    [Range(0, int.MaxValue)]
    public decimal? BladeSpeedFtPerMin { get; init; }

    /// <summary>Cutting rate in cm2/min, over the cut.</summary>
    [Range(0, int.MaxValue)]
    public required decimal CuttingRateCm2PerMin { get; init; }

    /// <summary>Cutting rate in in2/min; with inches only.</summary>
    [Range(0, int.MaxValue)]
    public decimal? CuttingRateIn2PerMin { get; init; }

    /// <summary>Blade feed (descent) in mm/min, over the cut.</summary>
    [Range(0, int.MaxValue)]
    public required decimal BladeFeedMmPerMin { get; init; }

    /// <summary>Blade feed in in/min; with inches only.</summary>
    [Range(0, int.MaxValue)]
    public decimal? BladeFeedInPerMin { get; init; }

    /// <summary>Highest power that the motor gives during the cut, in kW.</summary>
    [Range(0, int.MaxValue)]
    public required decimal PowerKw { get; init; }

    /// <summary>That power in mechanical horsepower; with inches only.</summary>
    [Range(0, int.MaxValue)]
    public decimal? PowerHp { get; init; }

    /// <summary>What holds the blade feed back over most of the cut.</summary>
    [KnownValues(typeof(CutLimit))]
    public required string LimitedBy { get; init; }

    /// <summary>Teeth in the work.</summary>
    public required TeethInWorkJson TeethInWork { get; init; }

    /// <summary>Area of the cut face in mm2.</summary>
    [Range(0, Limits.Amount)]
    public required decimal AreaMm2 { get; init; }

    /// <summary>Area of the cut face in in2; with inches only.</summary>
    [Range(0, Limits.Amount)]
    public decimal? AreaIn2 { get; init; }

    /// <summary>Time that the blade is in the work in seconds.</summary>
    [Range(0, int.MaxValue)]
    public required decimal SecondsPerCut { get; init; }

    /// <summary>One cycle of the saw; with `piece` only.</summary>
    public CutCycleJson? CycleSeconds { get; init; }

    /// <summary>How exactly the length is cut; with `piece` only.</summary>
    public LengthAccuracyJson? LengthAccuracy { get; init; }

    /// <summary>How far the face may be out of square over the blade's way, in the length unit of the request, rounded to 1.27 µm (0.00005 in).</summary>
    [LengthRange]
    public required decimal OutOfSquare { get; init; }

    /// <summary>Whether the ordered squareness is held; absent where none is ordered.</summary>
    public bool? HoldsSquareness { get; init; }

    /// <summary>Stress of the blade bent over the saw's wheels in MPa, E t/D; absent where their diameter is not stated.</summary>
    [Range(0, int.MaxValue)]
    public decimal? BendingStressMpa { get; init; }

    /// <summary>Diameter of the wheels over the thickness of the blade: below 300 it fails early; absent where the diameter is not stated.</summary>
    [Range(0, int.MaxValue)]
    public decimal? WheelDiameterPerThickness { get; init; }

    /// <summary>How a new blade is broken in.</summary>
    public required BreakInJson BreakIn { get; init; }

    /// <summary>Area that a new blade cuts in this grade in m2.</summary>
    public required SourcedValueJson BladeLifeM2 { get; init; }

    /// <summary>Share of a new blade's life that one cut uses, rounded up to 9 decimals.</summary>
    [Range(0, 1)]
    public required decimal BladeLifeShare { get; init; }

    /// <summary>Whole cuts that a new blade makes.</summary>
    [Range(1, 1_000_000_000)]
    public required long CutsPerBlade { get; init; }

    /// <summary>Whole cuts that this blade still makes, by its `remainingLife`; 0 where it has to be changed first.</summary>
    [Range(0, 1_000_000_000)]
    public required long CutsLeft { get; init; }

    /// <summary>New blades that all cuts of the quantity use up or begin.</summary>
    [Range(1, Limits.TotalQuantity)]
    public required int BladesNeeded { get; init; }

    /// <summary>Factors between the grade's reference values and these data, in order of use. The grade stands in the list of grades.</summary>
    public required IReadOnlyList<CutFactorJson> Factors { get; init; }

    /// <summary>Why each other blade of the saw was not chosen, by id.</summary>
    public required IReadOnlyList<RejectedBladeJson> RejectedBlades { get; init; }

    /// <summary>Cautions for the operator, by id.</summary>
    public required IReadOnlyList<string> CautionIds { get; init; }

    /// <summary>The caller's marks on the cut, unchanged.</summary>
    public IReadOnlyDictionary<string, string>? Attributes { get; init; }
}
