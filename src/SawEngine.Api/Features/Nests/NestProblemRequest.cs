using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Wire;
using SawEngine.Core;

namespace SawEngine.Api.Features.Nests;

/// <summary>Pieces to be cut from stock under one set of cut rules, without saws, dates and orders.</summary>
public abstract record NestProblemRequest : OperationRequest, ITimeLimited
{
    /// <summary>What is wanted.</summary>
    [MinLength(1), MaxLength(Limits.Lines)]
    public required IReadOnlyList<PieceJson> Pieces { get; init; }

    /// <summary>What it may be cut from. Pieces are cut only from stock of the same section and grade, or of a grade among their substitutes.</summary>
    [MaxLength(Limits.StockItems)]
    public required IReadOnlyList<NestStockJson> Stock { get; init; }

    /// <summary>What cutting takes.</summary>
    public required NestCutRulesJson Cut { get; init; }

    /// <summary>When a remainder is kept, and what it is worth. Left out, nothing is kept or credited.</summary>
    public RemnantRulesJson? Remnants { get; init; }

    /// <summary>
    /// Order lines, here entries of `pieces`, that may be begun and not finished at once: pallets that can stand at the saw. Where layouts cannot be put in an order with as few, a
    /// warning says how many there are; none is changed for it.
    /// </summary>
    [Range(1, Limits.Lines)]
    public int? MostOpenLines { get; init; }

    /// <summary>How much work may be spent; equal requests spend equal work and give equal answers.</summary>
    public Effort Effort { get; init; } = Effort.Standard;

    /// <summary>Seconds after which the best answer so far is taken. Left out, only effort limits the work.</summary>
    [Range(0, Limits.Seconds, MinimumIsExclusive = true)]
    public decimal? TimeLimitSeconds { get; init; }

    /// <summary>Whether values are money; else they are lengths.</summary>
    internal bool IsCosted => Stock.Any(item => item.Cost is not null);
}
