using SawEngine.Api.Wire;
using SawEngine.Core.CuttingData;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.CuttingData;

/// <summary>A blade of the saw that was not chosen.</summary>
public sealed record RejectedBladeJson
{
    /// <summary>Blade.</summary>
    public required string BladeId { get; init; }

    /// <summary>Why, for a program.</summary>
    [KnownValues(
        RejectionCodes.FewerThanWantedTeeth, RejectionCodes.MoreThanWantedTeeth, RejectionCodes.CoarserBladeFits, RejectionCodes.Slower,
        ObstacleCodes.TooFewTeeth, ObstacleCodes.NotEnoughPower, ObstacleCodes.TakesTooLong, UnscheduledReason.CutExceedsBladeLife)]
    public required string Reason { get; init; }

    /// <summary>Why, for a person.</summary>
    public required string Detail { get; init; }
}
