using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Wire;
using SawEngine.Core;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>A value with where it comes from; its unit stands in the name of the member.</summary>
public sealed record SourcedValueJson
{
    /// <summary>The value.</summary>
    [Range(0, Limits.Amount)]
    public required decimal Value { get; init; }

    /// <summary>Publication, table or practice that it comes from.</summary>
    public required string Source { get; init; }

    /// <summary>How far it can be trusted.</summary>
    [KnownValues(typeof(Confidence))]
    public required string Confidence { get; init; }

    /// <summary>The value in the unit of its member.</summary>
    public static SourcedValueJson Of<T>(Sourced<T> sourced, Func<T, decimal> inUnit) => new()
    {
        Value = inUnit(sourced.Value),
        Source = sourced.Source,
        Confidence = WireEnum.Text(sourced.Confidence),
    };
}
