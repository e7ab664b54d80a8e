using System.Globalization;
using SawEngine.Core.Nesting;

namespace SawEngine.Tests.Nesting;

/// <summary>A nest as text, all of it, to compare answers.</summary>
internal static class NestText
{
    public static string Of(Nest nest)
    {
        var layouts = nest.Layouts.Select(layout =>
            $"{layout.Repeat} x {layout.Stock.StockId}, {layout.Bundle.Wide} wide, {layout.Bundle.High} high: trim {layout.Trim}, {string.Join(", ", layout.Cuts)}, kerf {layout.KerfTotal}, {layout.Remainder}");
        return string.Join('\n', [.. layouts, .. nest.Unplaced.Select(row => row.ToString()),
            string.Create(CultureInfo.InvariantCulture, $"{nest.ValueMicros} >= {nest.BoundMicros}, {nest.StoppedBy}")]);
    }
}
