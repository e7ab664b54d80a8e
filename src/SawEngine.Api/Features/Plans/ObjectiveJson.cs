using System.ComponentModel.DataAnnotations;

namespace SawEngine.Api.Features.Plans;

/// <summary>Cost of a nest against what is proved.</summary>
public sealed record ObjectiveJson
{
    /// <summary>Stock less remainders: in the currency, or a length where stock has no costs.</summary>
    public required decimal Value { get; init; }

    /// <summary>No nest of the same pieces costs less.</summary>
    public required decimal Bound { get; init; }

    /// <summary>(value - bound) / value.</summary>
    [Range(0, 1)]
    public required decimal Gap { get; init; }
}
