using System.Globalization;
using CsCheck;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Wire;

/// <summary>Feet and inches as text, against arithmetic of this file: a foot is 304 800 000 nm and an inch 25 400 000 nm by definition of the yard.</summary>
public sealed class LengthTextTests
{
    private const long Foot = 304_800_000;
    private const long Inch = 25_400_000;
    private const long SixtyFourth = 396_875;

    [Theory]
    [InlineData("12'-6 3/8\"", 12 * Foot + 6 * Inch + 24 * SixtyFourth)]
    [InlineData("12' 6 3/8\"", 12 * Foot + 6 * Inch + 24 * SixtyFourth)]
    [InlineData("12'6-3/8\"", 12 * Foot + 6 * Inch + 24 * SixtyFourth)]
    [InlineData("12 ft 6 3/8 in", 12 * Foot + 6 * Inch + 24 * SixtyFourth)]
    [InlineData("12ft6in", 12 * Foot + 6 * Inch)]
    [InlineData("12'6\"", 12 * Foot + 6 * Inch)]
    [InlineData("12' - 6\"", 12 * Foot + 6 * Inch)]
    [InlineData("12'", 12 * Foot)]
    [InlineData("12 ft", 12 * Foot)]
    [InlineData("150 3/8\"", 150 * Inch + 24 * SixtyFourth)]
    [InlineData("150-3/8 in", 150 * Inch + 24 * SixtyFourth)]
    [InlineData("150in", 150 * Inch)]
    [InlineData("3/8\"", 24 * SixtyFourth)]
    [InlineData("6.375\"", 6 * Inch + 24 * SixtyFourth)]
    [InlineData("0.000005\"", 127)]
    [InlineData("6.3750000000\"", 6 * Inch + 24 * SixtyFourth)]
    [InlineData("0'-6\"", 6 * Inch)]
    [InlineData("12'-0\"", 12 * Foot)]
    [InlineData("12'-3/8\"", 12 * Foot + 24 * SixtyFourth)]
    [InlineData("12'-6.5\"", 12 * Foot + 6 * Inch + 32 * SixtyFourth)]
    [InlineData("12\u2032-6 3/8\u2033", 12 * Foot + 6 * Inch + 24 * SixtyFourth)]
    [InlineData("12'-11 63/64\"", 13 * Foot - SixtyFourth)]
    [InlineData("83333'-4\"", 1_000_000 * Inch)]
    public void Written_length_is_read_exactly(string text, long nanometers) => Assert.Equal(nanometers, Read(text, LengthUnit.In));

    /// <summary>All 63 fractions of an inch, alone, after inches and after feet, in lowest terms and in 64ths, in requests of both units.</summary>
    [Fact]
    public void Every_sixty_fourth_is_read_exactly()
    {
        var read = 0;
        for (var n = 1; n < 64; n++)
        {
            var common = n & -n;
            foreach (var fraction in new[] { $"{n}/64", $"{n / common}/{64 / common}" })
            {
                foreach (var unit in new[] { LengthUnit.Mm, LengthUnit.In })
                {
                    Assert.Equal(n * SixtyFourth, Read($"{fraction}\"", unit));
                    Assert.Equal(47 * Inch + n * SixtyFourth, Read($"47 {fraction}\"", unit));
                    Assert.Equal(12 * Foot + n * SixtyFourth, Read($"12'-{fraction}\"", unit));
                    Assert.Equal(12 * Foot + 11 * Inch + n * SixtyFourth, Read($"12'-11 {fraction}\"", unit));
                    read++;
                }
            }
            Assert.Equal(n * SixtyFourth, Read(string.Create(CultureInfo.InvariantCulture, $"{n / 64m}\""), LengthUnit.In));
        }
        Assert.Equal(252, read);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("12")]
    [InlineData("12.5'")]
    [InlineData("12'6")]
    [InlineData("12'-")]
    [InlineData("12'-12\"")]
    [InlineData("12'-11 64/64\"")]
    [InlineData("12'-150\"")]
    [InlineData("12' 12.0\"")]
    [InlineData("12'12'")]
    [InlineData("6\"12'")]
    [InlineData("6\"\"")]
    [InlineData("6''")]
    [InlineData("-6\"")]
    [InlineData("+6\"")]
    [InlineData("12'--6\"")]
    [InlineData("12'-6-\"")]
    [InlineData("6-\"")]
    [InlineData("6 3\"")]
    [InlineData("6 3/\"")]
    [InlineData("/8\"")]
    [InlineData("3/8")]
    [InlineData("3/3\"")]
    [InlineData("8/8\"")]
    [InlineData("9/8\"")]
    [InlineData("3/0\"")]
    [InlineData("1/10\"")]
    [InlineData("1/128\"")]
    [InlineData("1/1\"")]
    [InlineData("6 3/8/2\"")]
    [InlineData("6.5 3/8\"")]
    [InlineData("6.3/8\"")]
    [InlineData(".5\"")]
    [InlineData("6.\"")]
    [InlineData("6,375\"")]
    [InlineData("6 .375\"")]
    [InlineData("6.000001\"")]
    [InlineData("6.3750001\"")]
    [InlineData("1,200\"")]
    [InlineData("6e1\"")]
    [InlineData("0x6\"")]
    [InlineData(" 6\"")]
    [InlineData("6\" ")]
    [InlineData("6\"\n")]
    [InlineData("6\0\"")]
    [InlineData("6 IN")]
    [InlineData("6 mm")]
    [InlineData("6 inch")]
    [InlineData("6 feet")]
    [InlineData("\u0666\"")] // Arabic-Indic six
    [InlineData("\uFF16\"")] // full-width six
    [InlineData("6\u201D")] // closing quotation mark
    [InlineData("6\u00BD\"")] // one half as one character
    [InlineData("6 3\u20448\"")] // fraction slash
    [InlineData("12'\u20136\"")] // dash
    [InlineData("6\u00A03/8\"")] // no-break space
    [InlineData("NaN\"")]
    [InlineData("{0}'")]
    public void Anything_else_is_refused_and_the_form_shown(string text)
    {
        var fault = LengthText.FaultOf(text, LengthUnit.In);

        Assert.Equal(FaultCode.InvalidLengthText, fault?.Code);
        Assert.Contains("12'-6 3/8\"", fault!.Detail, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => LengthText.Read(text));
    }

    [Theory]
    [InlineData("0\"", LengthUnit.In, FaultCode.MustBePositive)]
    [InlineData("0'", LengthUnit.Mm, FaultCode.MustBePositive)]
    [InlineData("0'-0 0/64\"", LengthUnit.In, FaultCode.MustBePositive)]
    [InlineData("0.000\"", LengthUnit.In, FaultCode.MustBePositive)]
    [InlineData("1000000\"", LengthUnit.In, null)]
    [InlineData("1000000.000005\"", LengthUnit.In, FaultCode.TooLarge)]
    [InlineData("39370\"", LengthUnit.Mm, null)]
    [InlineData("39371\"", LengthUnit.Mm, FaultCode.TooLarge)]
    [InlineData("999999999999999999999999999999999999999'", LengthUnit.In, FaultCode.TooLarge)]
    [InlineData("999999999999999999999999999999999999 in", LengthUnit.Mm, FaultCode.TooLarge)]
    public void Length_lies_within_the_limits_of_a_number(string text, LengthUnit unit, string? code) => Assert.Equal(code, LengthText.FaultOf(text, unit)?.Code);

    /// <summary>Any length of feet, inches and 64ths, written in any of the ways, comes back.</summary>
    [Fact]
    public void What_is_written_is_read() =>
        Gen.Select(Gen.Int[0, 80_000], Gen.Int[0, 11], Gen.Int[0, 63], OneOf("'", "\u2032", "ft", " ft"), OneOf("", " ", "-", " - "), OneOf("\"", "\u2033", "in", " in"))
            .Where(t => t.Item1 + t.Item2 + t.Item3 > 0)
            .Sample((feet, inches, sixtyFourths, foot, joint, inch) => Assert.Equal(
                feet * Foot + inches * Inch + sixtyFourths * SixtyFourth,
                Read($"{feet}{foot}{joint}{inches} {sixtyFourths}/64{inch}", LengthUnit.In)));

    /// <summary>Any mixture of the characters of lengths is read or refused, and what is read is positive and within the limit.</summary>
    [Fact]
    public void No_text_is_a_fault_of_the_service() =>
        Gen.OneOf(Gen.Char["0123456789'\"-/. ftin\u2032\u2033"], Gen.Char).Array[0, 40].Select(characters => new string(characters))
            .Sample(text => Assert.InRange(Read(text, LengthUnit.In) ?? 1, 1, 1_000_000 * Inch), iter: 20_000);

    private static Gen<string> OneOf(params string[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static long? Read(string text, LengthUnit unit) => LengthText.FaultOf(text, unit) is null ? LengthText.Read(text).Nanometers : null;
}
