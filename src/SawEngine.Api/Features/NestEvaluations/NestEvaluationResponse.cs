using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Nests;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>What an edited nest breaks, takes and costs, against the engine's own.</summary>
public sealed record NestEvaluationResponse : OperationResponse
{
    /// <summary>Whether no rule is broken: the nest can be cut as it stands.</summary>
    public required bool IsClean { get; init; }

    /// <summary>The first thousand rules that are broken, in the order of the request's layouts; empty where it is clean.</summary>
    [MaxLength(Limits.ViolationsReported)]
    public required IReadOnlyList<NestViolationJson> Violations { get; init; }

    /// <summary>How many rules are broken.</summary>
    [Range(0, 100_000_000)]
    public required int ViolationCount { get; init; }

    /// <summary>
    /// Cost of the bars, of pulling, bringing and cutting them, less the value of their remainders, as they follow from the positions; a length in the length unit of the request where stock states no cost.
    /// Layouts of unknown stock count for nothing here and in the totals.
    /// </summary>
    [CostRange((double)Limits.Cost * Limits.TotalQuantity)]
    public required decimal Value { get; init; }

    /// <summary>Layouts that break no rule by themselves, by id, with all positions and what is left.</summary>
    public required IReadOnlyList<NestLayoutJson> Layouts { get; init; }

    /// <summary>Pieces that are ordered and in no layout, by piece id; one row for each. They are no violation, but where pieces alike of lower priority are placed.</summary>
    public required IReadOnlyList<UnplacedPieceJson> Unplaced { get; init; }

    /// <summary>The layouts in figures; they add up wherever the layouts of known stock break no rule.</summary>
    public required NestTotalsJson Totals { get; init; }

    /// <summary>The engine's own nest; absent where compare is false.</summary>
    public NestComparisonJson? Comparison { get; init; }
}
