using SawEngine.Core.Planning;

namespace SawEngine.Api.Features.Plans;

/// <summary>The price of a piece.</summary>
internal static class LinePrice
{
    /// <summary>Cost over planned pieces, to cents, half to even; null where none is planned.</summary>
    public static decimal? CostPerPiece(this PlannedLine line) =>
        line.Planned == 0 ? null : decimal.Round(line.Cost.Total.Amount / line.Planned, 2, MidpointRounding.ToEven);
}
