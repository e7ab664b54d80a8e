using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Api.Features.Plans;

/// <summary>One change that would make something promised less late.</summary>
public sealed record LatenessCureJson
{
    /// <summary>The last job goes ahead of others on its saw, to another saw, or is split in two on two saws (`mostParts` of a job allows it); the saw works longer, or is not down; or its material is there at the start of the plan.</summary>
    [KnownValues(typeof(LatenessCureKind))]
    public required string Kind { get; init; }

    /// <summary>The saw to which it would go, or which would work longer; absent where it stays.</summary>
    public string? SawId { get; init; }

    /// <summary>Hours, to 4 decimals, that it would still be late.</summary>
    [Range(0, int.MaxValue)]
    public required decimal LateHours { get; init; }

    /// <summary>By how much the whole schedule would cost more, lateness of all included, which the total cost of a plan leaves out; negative where less. What the change itself costs is not in it: sooner material or repair, or hours for which no overtime price is stated.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public required decimal CostChange { get; init; }

    /// <summary>Hours of overtime, to 4 decimals, in which the saw would be set up or work; absent for other changes.</summary>
    [Range(0, int.MaxValue)]
    public decimal? OvertimeHours { get; init; }

    internal static LatenessCureJson Of(LatenessCure cure) => new()
    {
        Kind = WireEnum.Text(cure.Kind),
        SawId = cure.SawId,
        LateHours = LatenessJson.Hours(cure.SecondsLate),
        CostChange = LatenessJson.Money(cure.CostChangeMicros),
        OvertimeHours = cure.Seconds is { } seconds ? LatenessJson.Hours(seconds) : null,
    };
}
