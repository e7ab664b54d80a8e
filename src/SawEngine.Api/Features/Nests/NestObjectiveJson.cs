using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Nests;

/// <summary>Cost of the layouts against what is proved.</summary>
public sealed record NestObjectiveJson
{
    /// <summary>Cost of the bars less the value of their remainders; a length in the length unit of the request where stock states no cost.</summary>
    [CostRange((double)Limits.Cost * Limits.TotalQuantity)]
    public required decimal Value { get; init; }

    /// <summary>No layouts that place the same pieces cost less.</summary>
    [CostRange((double)Limits.Cost * Limits.TotalQuantity)]
    public required decimal Bound { get; init; }

    /// <summary>Share that is not proved: (value - bound) / value, rounded up to 6 decimals.</summary>
    [Range(0, 1)]
    public required decimal Gap { get; init; }
}
