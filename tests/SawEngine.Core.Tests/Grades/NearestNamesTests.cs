namespace SawEngine.Core.Tests.Grades;

public sealed class NearestNamesTests
{
    [Fact]
    public void Fewest_edits_come_first_and_ties_are_in_ordinal_order() =>
        Assert.Equal(["kerf", "kerb", "kern"], NearestNames.Find("KERF", ["trim", "kern", "kerf", "kerb", "kern"], 3));

    /// <summary>Levenshtein's distance of "kitten" and "sitting" is 3 (textbook): nearer than a name at 4, farther than one at 2.</summary>
    [Fact]
    public void Insertions_deletions_and_substitutions_count_one_each() =>
        Assert.Equal(["mitten", "kit", "sitting", "kittenabcd"], NearestNames.Find("kitten", ["kittenabcd", "sitting", "kit", "mitten"], 4));

    [Fact]
    public void Nothing_known_gives_nothing() => Assert.Empty(NearestNames.Find("x", [], 3));
}
