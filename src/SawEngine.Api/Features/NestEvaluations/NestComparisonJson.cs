using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Nests;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>The engine's own nest for the same pieces and stock, and how the edited one stands to it.</summary>
public sealed record NestComparisonJson
{
    /// <summary>Whether the engine placed all and proved it best, placed all, some, or none.</summary>
    [KnownValues("optimal", "feasible", "partial", "infeasible")]
    public required string Status { get; init; }

    /// <summary>What the engine's layouts cost, and what is proved.</summary>
    public required NestObjectiveJson Objective { get; init; }

    /// <summary>Number of bars that the engine uses.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required int BarsUsed { get; init; }

    /// <summary>Number of pieces that the engine could not place. Where it differs from that of the edited nest, the costs are not for the same pieces.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required int PiecesUnplaced { get; init; }

    /// <summary>Value of the edited nest less that of the engine's: positive where the edited one costs more.</summary>
    [Range(-(double)Limits.Cost * Limits.TotalQuantity, (double)Limits.Cost * Limits.TotalQuantity)]
    public required decimal Difference { get; init; }

    /// <summary>Value of the edited nest divided by that of the engine's, to 6 decimals, half to even; absent where the engine's is 0.</summary>
    [Range(0, Limits.Amount)]
    public decimal? Ratio { get; init; }

    /// <summary>What ended the engine's search: the proof, the effort's work, or the clock.</summary>
    [KnownValues(typeof(StoppedBy))]
    public required string StoppedBy { get; init; }
}
