using SawEngine.Core.Stock;
using static SawEngine.Core.Tests.Nesting.Some;

namespace SawEngine.Core.Tests;

public class ValueListTests
{
    [Fact]
    public void Stock_with_equal_zones_and_reservations_is_equal()
    {
        StockItem Zoned(int to, params string[] reservedFor) =>
            Bar("B", 6000, 1) with { Zones = [new(Mm(1), Mm(to), ZoneKind.Defective)], ReservedFor = [.. reservedFor] };

        Assert.Equal(Zoned(2, "SO-1"), Zoned(2, "SO-1"));
        Assert.Equal(Zoned(2, "SO-1").GetHashCode(), Zoned(2, "SO-1").GetHashCode());
        Assert.NotEqual(Zoned(2, "SO-1"), Zoned(3, "SO-1"));
        Assert.NotEqual(Zoned(2, "SO-1"), Zoned(2, "SO-1", "SO-2"));
    }
}
