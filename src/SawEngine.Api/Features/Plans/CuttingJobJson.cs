using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Shop;

namespace SawEngine.Api.Features.Plans;

/// <summary>Layouts that are cut together on one saw with one set-up.</summary>
public sealed record CuttingJobJson
{
    /// <summary>Id of the job.</summary>
    public required string JobId { get; init; }

    /// <summary>Its saw.</summary>
    public required string SawId { get; init; }

    /// <summary>Place in the saw's sequence, from 1.</summary>
    [Range(1, int.MaxValue)]
    public required int Sequence { get; init; }

    /// <summary>Designation of the section.</summary>
    public required string Section { get; init; }

    /// <summary>Quarter turns clockwise, looking along the bar from first to second end, by which the section lies turned in the vise.</summary>
    [Range(0, 3)]
    public required int QuarterTurns { get; init; }

    /// <summary>Designation of the grade.</summary>
    public required string Grade { get; init; }

    /// <summary>Its blade.</summary>
    public required string BladeId { get; init; }

    /// <summary>The largest cut bundle in it, to which `cutting` belongs; absent where all bars are cut singly.</summary>
    public CutBundleJson? Bundle { get; init; }

    /// <summary>Set-up parts before it, and changes of worn blades in it, by start.</summary>
    public required IReadOnlyList<SetUpJson> SetUps { get; init; }

    /// <summary>Start of the first bar.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>End of the last.</summary>
    public required DateTimeOffset Finish { get; init; }

    /// <summary>Spans of work without a pause, by start; between them lie breaks, shifts' ends, blade changes and waits for an operator or a crane.</summary>
    public required IReadOnlyList<WorkSpanJson> Work { get; init; }

    /// <summary>Why it does not start earlier on its saw.</summary>
    public required JobWaitJson WaitsFor { get; init; }

    /// <summary>Why it is on its saw.</summary>
    public required SawChoiceJson SawChoice { get; init; }

    /// <summary>Cutting data.</summary>
    public required CuttingJson Cutting { get; init; }

    /// <summary>Where its time goes.</summary>
    public required JobSecondsJson Seconds { get; init; }

    /// <summary>Cautions for the operator, by id.</summary>
    public required IReadOnlyList<string> CautionIds { get; init; }
}
