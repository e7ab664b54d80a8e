using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>A shift, or overtime, by a recurrence rule.</summary>
public sealed record RecurringShiftJson : RecurringTimeJson
{
    /// <summary>Makes it overtime: the extra price of an hour in which a saw is set up or at work then, in the request's currency. A shift where absent.</summary>
    [CostRange(PlanLimits.OvertimeCostPerHour)]
    public decimal? CostPerHour { get; init; }
}
