using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Orders;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.Plans;

/// <summary>What is left of a bar, tail included.</summary>
public sealed record LayoutRemainderJson
{
    /// <summary>Its length, on the short side where the last cut is mitered.</summary>
    [LengthRange]
    public required decimal Length { get; init; }

    /// <summary>Whether it goes back to the rack.</summary>
    [KnownValues(typeof(RemainderKind))]
    public required string Kind { get; init; }

    /// <summary>Its first face where the last cut is mitered.</summary>
    public EndCutJson? StartCut { get; init; }

    /// <summary>Mass in kg, of its length.</summary>
    [Range(0, int.MaxValue)]
    public required decimal MassKg { get; init; }

    /// <summary>Mass in lb; with inches only.</summary>
    [Range(0, int.MaxValue)]
    public decimal? MassLb { get; init; }

    /// <summary>What it is worth, its handling taken off; absent where stock has no costs.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public decimal? Value { get; init; }

    /// <summary>Id for its label and the stock record; absent for scrap.</summary>
    public string? RemnantId { get; init; }
}
