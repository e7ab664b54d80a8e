namespace SawEngine.Core.Tests;

public sealed class NearestNamesTests
{
    [Theory]
    [InlineData("kitten", "sitting", 3)] // the usual textbook example
    [InlineData("saturday", "sunday", 3)]
    [InlineData("", "kerf", 4)]
    [InlineData("kerf", "", 4)]
    [InlineData("kerff", "kerf", 1)]
    [InlineData("kerf", "kerf", 0)]
    public void Edit_distance_counts_single_edits(string a, string b, int distance)
    {
        Assert.Equal(distance, NearestNames.EditDistance(a, b));
        Assert.Equal(distance, NearestNames.EditDistance(b, a));
    }

    [Fact]
    public void Equally_near_names_stand_in_ordinal_order() =>
        Assert.Equal(["Xa", "ab", "xa", "abc"], NearestNames.Of("a", ["xa", "abc", "Xa", "ab"], 4));

    [Fact]
    public void No_more_names_than_there_are() => Assert.Equal(["b", "cc"], NearestNames.Of("a", ["cc", "b"], 10));
}
