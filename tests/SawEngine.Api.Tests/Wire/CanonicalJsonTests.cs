using System.Globalization;
using System.Text;
using System.Text.Json;
using SawEngine.Api.Wire.Canonical;

namespace SawEngine.Api.Tests.Wire;

/// <summary>The published examples of RFC 8785.</summary>
public sealed class CanonicalJsonTests
{
    [Fact]
    public void Primitive_values_are_written_as_in_section_3_2_2()
    {
        var canonical = Canonical("""
            {
              "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
              "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
              "literals": [null, true, false]
            }
            """);

        Assert.Equal("""{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}""", canonical);
    }

    [Fact]
    public void Members_are_sorted_by_utf16_code_units_as_in_section_3_2_3()
    {
        var canonical = Canonical("""
            {
              "\u20ac": "Euro Sign",
              "\r": "Carriage Return",
              "\ufb33": "Hebrew Letter Dalet With Dagesh",
              "1": "One",
              "\ud83d\ude00": "Emoji: Grinning Face",
              "\u0080": "Control",
              "\u00f6": "Latin Small Letter O With Diaeresis"
            }
            """);

        string[] sorted = ["Carriage Return", "One", "Control", "Latin Small Letter O With Diaeresis", "Euro Sign", "Emoji: Grinning Face", "Hebrew Letter Dalet With Dagesh"];
        using var document = JsonDocument.Parse(canonical);
        Assert.Equal(sorted, document.RootElement.EnumerateObject().Select(member => member.Value.GetString()));
    }

    [Fact]
    public void Canonical_bytes_are_those_of_section_3_2_4()
    {
        const string published = """
            7b 22 6c 69 74 65 72 61 6c 73 22 3a 5b 6e 75 6c 6c 2c 74 72 75 65 2c 66 61 6c 73 65 5d 2c 22 6e 75 6d 62 65 72 73 22 3a 5b 33 33 33 33 33 33
            33 33 33 2e 33 33 33 33 33 33 33 2c 31 65 2b 33 30 2c 34 2e 35 2c 30 2e 30 30 32 2c 31 65 2d 32 37 5d 2c 22 73 74 72 69 6e 67 22 3a 22 e2 82
            ac 24 5c 75 30 30 30 66 5c 6e 41 27 42 5c 22 5c 5c 5c 5c 5c 22 2f 22 7d
            """;
        var canonical = Canonical("""
            {"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}
            """);

        Assert.Equal(string.Join(' ', published.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), string.Join(' ', Encoding.UTF8.GetBytes(canonical).Select(b => b.ToString("x2", CultureInfo.InvariantCulture))));
    }

    /// <summary>IEEE-754 bits and their text, from appendix B.</summary>
    [Theory]
    [InlineData("0000000000000000", "0")]
    [InlineData("8000000000000000", "0")]
    [InlineData("0000000000000001", "5e-324")]
    [InlineData("8000000000000001", "-5e-324")]
    [InlineData("7fefffffffffffff", "1.7976931348623157e+308")]
    [InlineData("ffefffffffffffff", "-1.7976931348623157e+308")]
    [InlineData("4340000000000000", "9007199254740992")]
    [InlineData("c340000000000000", "-9007199254740992")]
    [InlineData("4430000000000000", "295147905179352830000")]
    [InlineData("44b52d02c7e14af5", "9.999999999999997e+22")]
    [InlineData("44b52d02c7e14af6", "1e+23")]
    [InlineData("44b52d02c7e14af7", "1.0000000000000001e+23")]
    [InlineData("444b1ae4d6e2ef4e", "999999999999999700000")]
    [InlineData("444b1ae4d6e2ef4f", "999999999999999900000")]
    [InlineData("444b1ae4d6e2ef50", "1e+21")]
    [InlineData("3eb0c6f7a0b5ed8c", "9.999999999999997e-7")]
    [InlineData("3eb0c6f7a0b5ed8d", "0.000001")]
    [InlineData("41b3de4355555553", "333333333.3333332")]
    [InlineData("41b3de4355555554", "333333333.33333325")]
    [InlineData("41b3de4355555555", "333333333.3333333")]
    [InlineData("41b3de4355555556", "333333333.3333334")]
    [InlineData("41b3de4355555557", "333333333.33333343")]
    [InlineData("becbf647612f3696", "-0.0000033333333333333333")]
    [InlineData("43143ff3c1cb0959", "1424953923781206.2")]
    public void Numbers_are_written_as_in_appendix_b(string bits, string expected)
    {
        var value = BitConverter.Int64BitsToDouble(long.Parse(bits, NumberStyles.HexNumber, CultureInfo.InvariantCulture));

        Assert.Equal(expected, CanonicalJson.Of(JsonSerializer.SerializeToElement(value)));
    }

    [Fact]
    public void Lists_are_sorted_by_id_only_on_demand()
    {
        const string json = """{"stock":[{"stockId":"b"},{"stockId":"B"},{"stockId":"a","n":1}],"names":["z","a"],"points":[{"x":2},{"x":1}],"numbers":[3,1]}""";

        Assert.Equal("""{"names":["z","a"],"numbers":[3,1],"points":[{"x":2},{"x":1}],"stock":[{"stockId":"b"},{"stockId":"B"},{"n":1,"stockId":"a"}]}""", Canonical(json));
        Assert.Equal(
            """{"names":["a","z"],"numbers":[3,1],"points":[{"x":2},{"x":1}],"stock":[{"stockId":"B"},{"n":1,"stockId":"a"},{"stockId":"b"}]}""",
            Canonical(json, sortLists: true));
    }

    private static string Canonical(string json, bool sortLists = false)
    {
        using var document = JsonDocument.Parse(json);
        return CanonicalJson.Of(document.RootElement, sortLists);
    }
}
