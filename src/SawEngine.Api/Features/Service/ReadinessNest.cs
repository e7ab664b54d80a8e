using SawEngine.Core.Nesting;
using SawEngine.Core.Quantities;

namespace SawEngine.Api.Features.Service;

/// <summary>The smallest nest that there is: one piece from one bar.</summary>
internal static class ReadinessNest
{
    public static readonly NestProblem Problem = new()
    {
        Lines = [new() { Ref = new("", "probe"), Length = Length.FromMillimeters(100), Quantity = 1 }],
        Stock =
        [
            new()
            {
                StockId = "probe", Kind = Core.Stock.StockKind.Bar, Length = Length.FromMillimeters(200), CostMicros = Length.FromMillimeters(200).Nanometers,
            },
        ],
        Rules = new() { Kerf = Length.FromMillimeters(1) },
    };
}
