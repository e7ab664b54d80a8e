using SawEngine.Core.Orders;

namespace SawEngine.Core.Tests.Orders;

public class PieceRefTests
{
    [Fact]
    public void Refs_sort_by_order_then_line_ordinal()
    {
        PieceRef[] sorted = [new("", "b"), new("SO-1", "10"), new("SO-1", "9"), new("so-1", "1")];

        Assert.Equal(sorted, sorted.Reverse().Order());
    }

    [Fact]
    public void Piece_without_an_order_is_named_by_its_id_alone()
    {
        Assert.Equal("P1", new PieceRef("", "P1").ToString());
        Assert.Equal("SO-1/10", new PieceRef("SO-1", "10").ToString());
    }
}
