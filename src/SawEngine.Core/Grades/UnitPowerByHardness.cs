namespace SawEngine.Core.Grades;

/// <summary>
/// Power per material removed of a group of steels by Brinell hardness, sharp tool, thick chip. The table gives it for bands of hardness; it holds in the middle
/// of each, in between it runs in straight lines, and beyond the first and last middle it stays.
/// </summary>
public sealed class UnitPowerByHardness
{
    private const decimal SecondsPerMinute = 60m;

    private readonly (decimal HardnessHb, decimal KilowattsPerCm3PerSecond)[] _points;

    internal UnitPowerByHardness(string group, string source, IReadOnlyList<(decimal LowestHb, decimal HighestHb, decimal KilowattsPerCm3PerSecond)> bands)
    {
        (Group, Source) = (group, source);
        _points = [.. bands.Select(band => ((band.LowestHb + band.HighestHb) / 2, band.KilowattsPerCm3PerSecond))];
    }

    /// <summary>The group of steels, as the table names it.</summary>
    public string Group { get; }

    /// <summary>The publication.</summary>
    public string Source { get; }

    /// <summary>The hardnesses at which the table gives it: the middles of its bands, ascending.</summary>
    public IEnumerable<decimal> Hardnesses => _points.Select(point => point.HardnessHb);

    /// <summary>Kilowatts per cubic centimeter per minute at a hardness, rounded to 0.0001, half to even.</summary>
    public decimal At(decimal hardnessHb) => decimal.Round(PerSecondAt(hardnessHb) / SecondsPerMinute, 4, MidpointRounding.ToEven);

    private decimal PerSecondAt(decimal hardnessHb)
    {
        if (hardnessHb <= _points[0].HardnessHb)
            return _points[0].KilowattsPerCm3PerSecond;
        for (var i = 1; i < _points.Length; i++)
        {
            var ((low, atLow), (high, atHigh)) = (_points[i - 1], _points[i]);
            if (hardnessHb <= high)
                return atLow + (atHigh - atLow) * (hardnessHb - low) / (high - low);
        }
        return _points[^1].KilowattsPerCm3PerSecond;
    }
}
