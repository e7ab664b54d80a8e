using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace SawEngine.Api.Wire;

/// <summary>What is wrong with a text, number or truth value, by the type that it is read into.</summary>
internal static partial class LeafShape
{
    private static readonly Dictionary<Type, Func<JsonElement, LeafFault?>> Readers = new()
    {
        [typeof(decimal)] = Number,
        [typeof(int)] = value => Integer(value, int.MinValue, int.MaxValue),
        [typeof(long)] = value => Integer(value, long.MinValue, long.MaxValue),
        [typeof(bool)] = Truth,
        [typeof(DateTimeOffset)] = value =>
            Formatted(value, IsInstant, FaultCode.InvalidDateTime, "a date and time with offset (RFC 3339), such as 2026-11-30T06:00:00+01:00"),
        [typeof(DateOnly)] = value => Formatted(value, IsDate, FaultCode.InvalidDateTime, "a date such as 2026-11-30"),
        [typeof(TimeOnly)] = value => Formatted(value, text => ClockTimeConverter.TryRead(text, out _), FaultCode.InvalidTime, "a time of day such as 06:00"),
    };

    /// <summary>What is wrong; null where nothing is.</summary>
    public static LeafFault? FaultOf(JsonElement value, Type type, int longestText)
    {
        var read = Nullable.GetUnderlyingType(type) ?? type;
        return read.IsEnum ? Enumerated(value, read)
            : read == typeof(string) ? Text(value, longestText)
            : Readers[read](value);
    }

    /// <summary>The kind of a JSON value in words.</summary>
    public static string Kind(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        JsonValueKind.Null => "null",
        _ => "true or false",
    };

    public static LeafFault WrongType(JsonElement value, string expected) => new(FaultCode.WrongType, $"Must be {expected}, but is {Kind(value)}.");

    /// <summary>A text; false where the value is none, or one that has half of a surrogate pair.</summary>
    public static bool TryGetText(JsonElement value, out string text)
    {
        text = "";
        if (value.ValueKind != JsonValueKind.String)
            return false;
        try
        {
            text = value.GetString()!;
            return true;
        }
        catch (InvalidOperationException)
        {
            return false;
        }
    }

    private static LeafFault? Truth(JsonElement value) =>
        value.ValueKind is JsonValueKind.True or JsonValueKind.False ? null : WrongType(value, "true or false");

    private static LeafFault? Text(JsonElement value, int longest)
    {
        if (value.ValueKind != JsonValueKind.String)
            return WrongType(value, "a text");
        if (!TryGetText(value, out var text))
            return new(FaultCode.InvalidCharacter, "Contains half of a surrogate pair.");
        var length = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            length++;
            if (Quoted.IsControl(rune))
                return new(FaultCode.InvalidCharacter, $"Contains the control character U+{rune.Value:X4}.");
        }
        return length > longest ? new(FaultCode.TooLong, $"Must be at most {longest} characters long, but is {length}.") : null;
    }

    private static LeafFault? Enumerated(JsonElement value, Type type)
    {
        if (value.ValueKind != JsonValueKind.String)
            return WrongType(value, "a text");
        if (!TryGetText(value, out var text))
            return new(FaultCode.InvalidCharacter, "Contains half of a surrogate pair.");
        var known = WireEnum.Texts(type);
        return known.Contains(text, StringComparer.Ordinal)
            ? null
            : new(FaultCode.UnknownValue, $"Must be one of {string.Join(", ", known)}, but is {Quoted.Text(text)}.{NearestName.Question(text, known)}");
    }

    private static LeafFault? Number(JsonElement value)
    {
        if (value.ValueKind != JsonValueKind.Number)
            return WrongType(value, "a number");
        var written = WrittenNumber.Of(value.GetRawText());
        return written.IsZero ? null
            : !value.TryGetDecimal(out _) ? OutOfRange("-7.9e28", "7.9e28")
            : written.Digits > WrittenNumber.MostDigits
                ? new(FaultCode.TooManyDigits, $"Must have at most {WrittenNumber.MostDigits} significant digits, but has {written.Digits}.")
            : written.LastPlace < -WrittenNumber.MostDigits ? new(FaultCode.TooSmallToRead, $"Must be a multiple of 1e-{WrittenNumber.MostDigits}.")
            : null;
    }

    private static LeafFault? Integer(JsonElement value, long lowest, long highest)
    {
        if (value.ValueKind != JsonValueKind.Number)
            return WrongType(value, "an integer");
        var written = WrittenNumber.Of(value.GetRawText());
        if (!written.IsZero && written.LastPlace < 0)
            return new(FaultCode.NotAnInteger, "Must be an integer.");
        return written.IsZero || (value.TryGetDecimal(out var number) && number >= lowest && number <= highest)
            ? null
            : OutOfRange(lowest.ToString(CultureInfo.InvariantCulture), highest.ToString(CultureInfo.InvariantCulture));
    }

    private static LeafFault OutOfRange(string lowest, string highest) => new(FaultCode.OutOfRange, $"Must lie between {lowest} and {highest}.");

    private static LeafFault? Formatted(JsonElement value, Func<string, bool> isFormatted, string code, string expected)
    {
        if (value.ValueKind != JsonValueKind.String)
            return WrongType(value, "a text");
        return TryGetText(value, out var text) && isFormatted(text) ? null : new(code, $"Must be {expected}.");
    }

    private static bool IsInstant(string text) =>
        InstantForm().IsMatch(text) && DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.None, out _);

    private static bool IsDate(string text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _);

    [GeneratedRegex(@"^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\.[0-9]{1,7})?(Z|[+-][0-9]{2}:[0-9]{2})$", RegexOptions.NonBacktracking)]
    private static partial Regex InstantForm();
}
