using SawEngine.Api.Features.Orders;

namespace SawEngine.Api.Features.Plans;

/// <summary>What is left of a bar, tail included.</summary>
public sealed record LayoutRemainderJson
{
    /// <summary>Its length, in the length unit of the request.</summary>
    public required decimal Length { get; init; }

    /// <summary>remnant or scrap.</summary>
    public required string Kind { get; init; }

    /// <summary>Its first face where the last cut is mitered.</summary>
    public EndCutJson? StartCut { get; init; }

    /// <summary>Mass in kg.</summary>
    public required decimal MassKg { get; init; }

    /// <summary>Mass in lb; with inches only.</summary>
    public decimal? MassLb { get; init; }

    /// <summary>What it is worth; absent where stock has no costs.</summary>
    public decimal? Value { get; init; }

    /// <summary>Id for its label and the stock record; absent for scrap.</summary>
    public string? RemnantId { get; init; }
}
