using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using SawEngine.Core.CuttingData;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;

namespace SawEngine.Core.Tests.CuttingData;

/// <summary>Every number of the trade stands in one place, with its source: in the parameters of cutting, the defaults of a saw, or the fixed values.</summary>
public sealed partial class DefaultNumbersTests
{
    /// <summary>Where numbers of the trade are stated.</summary>
    private static readonly string[] s_stated = ["CuttingParameters.cs", "SawDefaults.cs", "DefaultBlades.cs", "WidthCorrection.cs", "BladeLife.cs", "BladeStress.cs"];

    /// <summary>Numbers that are none of the trade: units, percent, tolerances of rounding, points of numeric integration.</summary>
    private static readonly string[] s_noDefaults =
    [
        "0.5", "0.25", "9.5", "16.5", "32", "10", "25.4", "60", "100", "1000", "3600", "100_000", "1_000_000", "90_000", "1e-6", "1e-8", "1e-9", "1e-12",
    ];

    [Fact]
    public void Every_parameter_of_cutting_is_listed_with_a_source()
    {
        var parameters = typeof(CuttingParameters).GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.PropertyType == typeof(decimal)).Select(property => (decimal)property.GetValue(CuttingParameters.Default)!);
        Assert.Equal(parameters.Order(), CuttingParameters.Default.Values.Select(value => value.Value).Order());
        Assert.All(CuttingParameters.Default.Values, value => Assert.NotEmpty(value.Source));
    }

    [Fact]
    public void Every_default_of_a_saw_has_a_source()
    {
        var size = Length.FromMillimeters(400m);
        Assert.All(SawDefaults.For(new(size, size, size)).Values, value => Assert.NotEmpty(value.Source));
    }

    [Theory]
    [InlineData("CuttingData")]
    [InlineData("Saws")]
    [InlineData("Times")]
    public void No_number_of_the_trade_stands_outside_the_lists(string folder)
    {
        var found = Directory.GetFiles(Path.Combine(CoreFolder(), folder), "*.cs").Order(StringComparer.Ordinal)
            .Where(file => !s_stated.Contains(Path.GetFileName(file)))
            .SelectMany(file => NumbersIn(File.ReadAllText(file)).Select(number => $"{Path.GetFileName(file)}: {number}"))
            .ToList();
        Assert.True(found.Count == 0, "State them in CuttingParameters, SawDefaults or FixedValues: " + string.Join(", ", found));
    }

    [Fact]
    public void Number_in_code_is_told_from_one_in_comments_names_and_texts() =>
        Assert.Equal(["0.7", "45"], NumbersIn("/// 12 teeth\nvar x2 = Area / 100 * 0.7m; // 13\nvar text = $\"14 {x2:0.0}\";\nReturn(45, 3, 1e-9);"));

    /// <summary>Literals of more than one digit, apart from those that are no defaults.</summary>
    private static IEnumerable<string> NumbersIn(string code) => Literal().Matches(CommentOrText().Replace(code, " "))
        .Select(match => match.Groups["number"].Value).Where(number => number.Length > 1 && !s_noDefaults.Contains(number)
            && decimal.TryParse(number.Replace("_", "", StringComparison.Ordinal), NumberStyles.Float, CultureInfo.InvariantCulture, out _));

    private static string CoreFolder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "SawEngine.sln")))
            folder = folder.Parent ?? throw new InvalidOperationException("The tests run outside the repository.");
        return Path.Combine(folder.FullName, "src", "SawEngine.Core");
    }

    [GeneratedRegex("""//[^\n]*|"([^"\\\n]|\\.)*" """, RegexOptions.IgnorePatternWhitespace | RegexOptions.CultureInvariant)]
    private static partial Regex CommentOrText();

    [GeneratedRegex(@"(?<![\w.])(?<number>[0-9][0-9_]*(\.[0-9]+)?(e-?[0-9]+)?)[mdL]?(?![\w])", RegexOptions.CultureInvariant)]
    private static partial Regex Literal();
}
