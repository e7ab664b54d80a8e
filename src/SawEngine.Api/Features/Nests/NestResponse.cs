using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.Nests;

/// <summary>Bar layouts for the pieces, what they cost against what is proved, and what could not be placed and why.</summary>
public sealed record NestResponse : OperationResponse
{
    /// <summary>All placed and proved best, all placed but for accepted under quantities, some placed, or none.</summary>
    [KnownValues("optimal", "feasible", "partial", "infeasible")]
    public required string Status { get; init; }

    /// <summary>What the layouts cost, and what is proved.</summary>
    public required NestObjectiveJson Objective { get; init; }

    /// <summary>Bar layouts, by id.</summary>
    public required IReadOnlyList<NestLayoutJson> Layouts { get; init; }

    /// <summary>What is on no bar, by piece id; one row for each.</summary>
    public required IReadOnlyList<UnplacedPieceJson> Unplaced { get; init; }

    /// <summary>Stock that the answer counts on, by id.</summary>
    public required IReadOnlyList<ClaimJson> Claims { get; init; }

    /// <summary>The layouts in figures.</summary>
    public required NestTotalsJson Totals { get; init; }

    /// <summary>What ended the search: the proof, the effort's work, or the clock, where it ended that for alternatives and near misses, too.</summary>
    [KnownValues(typeof(StoppedBy))]
    public required string StoppedBy { get; init; }

    /// <summary>Nests of other kinds that were asked for and found, by kind.</summary>
    public IReadOnlyList<NestAlternativeJson>? Alternatives { get; init; }

    /// <summary>Small changes that save a bar, where asked for: more pieces placed first, then the greatest saving.</summary>
    public IReadOnlyList<NearMissJson>? NearMisses { get; init; }
}
