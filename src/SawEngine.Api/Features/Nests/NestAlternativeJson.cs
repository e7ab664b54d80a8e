using SawEngine.Api.Wire;
using SawEngine.Core.Nesting.Alternatives;

namespace SawEngine.Api.Features.Nests;

/// <summary>A nest of the same pieces that is better in its kind, verified and costed like the cheapest one.</summary>
public sealed record NestAlternativeJson
{
    /// <summary>What it is better in. Of several sections and grades, each that has no better nest of this kind keeps its cheapest.</summary>
    [KnownValues(typeof(NestKind))]
    public required string Kind { get; init; }

    /// <summary>What it costs, against the bound of the cheapest.</summary>
    public required NestObjectiveJson Objective { get; init; }

    /// <summary>Its bar layouts, by id.</summary>
    public required IReadOnlyList<NestLayoutJson> Layouts { get; init; }

    /// <summary>Stock that it counts on, by id.</summary>
    public required IReadOnlyList<Stock.ClaimJson> Claims { get; init; }

    /// <summary>The layouts in figures.</summary>
    public required NestTotalsJson Totals { get; init; }
}
