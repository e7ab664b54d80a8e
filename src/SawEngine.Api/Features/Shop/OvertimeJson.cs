using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Shop;

/// <summary>Overtime on some days of the week: a shift that is worked where it pays. It begins and ends on the same day.</summary>
public sealed record OvertimeJson : ShiftJson
{
    /// <summary>Extra price of an hour in which a saw is set up or at work then, beside its machine and labor cost, in the request's currency.</summary>
    [CostRange(PlanLimits.OvertimeCostPerHour)]
    public required decimal CostPerHour { get; init; }
}
