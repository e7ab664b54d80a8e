using System.ComponentModel.DataAnnotations;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Estimates;

/// <summary>An order in figures.</summary>
public sealed record EstimateTotalsJson
{
    /// <summary>Pieces ordered.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required int PiecesOrdered { get; init; }

    /// <summary>Pieces that can be cut.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required int PiecesPlanned { get; init; }

    /// <summary>Bars and remnants used.</summary>
    [Range(0, Limits.TotalQuantity)]
    public required int BarsUsed { get; init; }

    /// <summary>Mass of pieces and remnants over mass of bars, to 4 decimals.</summary>
    [Range(0, 1)]
    public required decimal MaterialYield { get; init; }

    /// <summary>Where the time goes; the total is the sum of the lines' seconds, to a tenth.</summary>
    public required JobSecondsJson Seconds { get; init; }

    /// <summary>Sum of the lines' costs.</summary>
    [Range(-Limits.Amount, Limits.Amount)]
    public required decimal Cost { get; init; }
}
