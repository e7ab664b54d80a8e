using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.Json.Nodes;
using CsCheck;

namespace SawEngine.Api.Tests.Faults;

/// <summary>Bodies made from a good one by one to four changes, of its tree, of its text or of its bytes; the seed decides all.</summary>
/// <param name="example">The good body.</param>
/// <param name="strangers">Bodies of other operations, to be mixed in.</param>
/// <param name="seed">The seed.</param>
internal sealed class HostileBodies(string example, IReadOnlyList<string> strangers, ulong seed)
{
    private static readonly string[] Junk =
    [
        "null", "true", "0", "-0", "-1", "1", "1.5", "7", "60", "90", "180", "360", "999", "100000", "100001", "1000000", "1000000.000001", "2147483647", "2147483648", "9223372036854775808", "1e400", "-1e400",
        "1e-300", "1e28", "7e28", "0.000001", "0.0000001", "0.000005", "0.0001", "1.234567890123456789012345678901", "NaN", "Infinity", "01", "+1", "1.", ".5", "0x10", "\"\"", "\" \"", "\"x\"", "\"0\"",
        "\"1\"", "\"NaN\"", "\"\\ud800\"", "\"\\u0000\"", "\"\\u202e\"", "\"\\u2028\"", "\"\ud83d\ude00\"", "\"../../etc/passwd\"", "\"'; DROP TABLE bars; --\"", "\"<script>alert(1)</script>\"", "\"${jndi:ldap://x}\"",
        "\"%s%n\"", "\"=1+1\"", "\"IPE 200\"", "\"Round 50\"", "\"HSS4X4X1/4\"", "\"S355J2\"", "\"304\"", "\"C45\"", "\"mm\"", "\"in\"", "\"bar\"", "\"remnant\"", "\"purchasable\"", "\"thorough\"", "\"quick\"",
        "\"2026-11-30T06:00:00+01:00\"", "\"0001-01-01T00:00:00Z\"", "\"9999-12-31T23:59:59+14:00\"", "\"2026-02-30T00:00:00Z\"", "\"24:00\"", "\"00:00\"", "\"23:59\"", "\"MO\"", "\"12'-6 3/8\\\"\"", "\"1/0\\\"\"",
        "[]", "{}", "[null]", "[[]]", "[{}]", "[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]", "{\"\":null}", "{\"widthAngle\":60,\"heightAngle\":-60}", "{\"min\":1,\"max\":1}",
    ];

    private static readonly string[] Numbers =
        ["0", "-1", "1", "0.5", "1.5", "2", "7", "45", "60", "90", "180", "360", "999", "1e3", "100000", "1000000", "0.000001", "0.000005", "0.001", "86400", "12345.678", "2147483647"];

    private static readonly string[] Texts = [.. Junk.Where(junk => junk[0] == '"')];

    private static readonly string?[] MediaTypes =
        ["text/plain", "application/xml", "application/json; charset=utf-16", "application/json; charset=\"utf-8\"", "application/json;", "json", "", null, "application/vnd.x+json", "multipart/form-data; boundary=x"];

    private readonly PCG _chance = new(1, seed);

    /// <summary>The next body; every second one has the right shape and odd values.</summary>
    public HostileBody Next()
    {
        if (Below(2) == 0)
            return Plain(Encoding.UTF8.GetBytes(ValuesChanged()), "application/json");
        var bytes = Encoding.UTF8.GetBytes(Changed());
        for (var changes = Below(3) == 0 ? 1 + Below(3) : 0; changes > 0; changes--)
            bytes = BytesChanged(bytes);
        var contentType = Below(40) == 0 ? Any(MediaTypes) : "application/json";
        return Below(25) switch
        {
            0 => new(bytes, contentType, "gzip", Packed(bytes)),
            1 => new(bytes, contentType, "gzip", BytesChanged(Packed(bytes))),
            2 => new(bytes, contentType, Any(["br", "gzip, gzip", "zstd", "x", "identity", "deflate"]), bytes),
            _ => Plain(bytes, contentType),
        };
    }

    private string ValuesChanged()
    {
        var root = JsonNode.Parse(example)!;
        var places = JsonPlaces.Of(root).Where(place => JsonPlaces.At(root, place) is JsonValue).ToList();
        for (var changes = 1 + Below(4); changes > 0; changes--)
            root = JsonNode.Parse(JsonPlaces.With(root, Any(places), text => text[0] == '"' ? Any(Names(root)) : Below(2) == 0 ? NumberChanged(text) : Any(Numbers)))!;
        return root.ToJsonString();
    }

    /// <summary>The texts of a body.</summary>
    private static List<string> Names(JsonNode root) =>
        [.. JsonPlaces.Of(root).Select(place => JsonPlaces.At(root, place)).OfType<JsonValue>().Select(value => value.ToJsonString()).Where(text => text[0] == '"')];

    private string Changed()
    {
        var text = example;
        for (var changes = Below(4); changes > 0; changes--)
        {
            if (Tree(text) is { } root)
                text = TreeChanged(root);
        }
        return text;
    }

    private static JsonNode? Tree(string text)
    {
        try
        {
            var root = JsonNode.Parse(text);
            _ = (JsonPlaces.Of(root).Count(), root?.ToJsonString());
            return root;
        }
        catch (Exception unreadable) when (unreadable is System.Text.Json.JsonException or InvalidOperationException or ArgumentException)
        {
            return null;
        }
    }

    private string TreeChanged(JsonNode root)
    {
        var places = JsonPlaces.Of(root).Where(IsPlain).ToList();
        var place = Any(places);
        return JsonPlaces.With(root, place, text => Below(8) switch
        {
            0 or 1 or 2 => Any(Alike(text)),
            3 => JsonPlaces.At(root, Any(places))?.ToJsonString() ?? "null",
            4 when text[0] == '{' => text[..^1] + (text.Length > 2 ? "," : "") + $"\"{Any(["surprise", "length", "Quantity", "__proto__", "$type", "a/b~c%", ""])}\":{Any(Junk)}}}",
            4 when text[0] == '[' && text.Length > 2 => $"[{string.Join(',', Enumerable.Repeat(text[1..^1], 1 + Below(50)))}]",
            5 when text[0] == '{' => Without(text),
            6 when text[0] is '-' or (>= '0' and <= '9') => NumberChanged(text),
            6 when text[0] == '"' => $"\"{string.Concat(Enumerable.Repeat(text[1..^1], Any([0, 2, 65, 300])))}\"",
            7 => Tree(Any(strangers)) is { } stranger ? JsonPlaces.At(stranger, Any([.. JsonPlaces.Of(stranger).Where(IsPlain)]))?.ToJsonString() ?? "null" : "null",
            _ => Any(Junk),
        });
    }

    /// <summary>Whether plain splitting finds the place again.</summary>
    private static bool IsPlain(string place) => place[1..].All(c => char.IsAsciiLetterOrDigit(c) || c == '/') && !place.Contains("//", StringComparison.Ordinal) && place[^1] != '/';

    /// <summary>Mostly junk of the same kind, which gets past the shape.</summary>
    private string[] Alike(string text) => Below(4) == 0 ? Junk : text[0] is '-' or (>= '0' and <= '9') ? Numbers : text[0] == '"' ? Texts : Junk;

    private string NumberChanged(string text) =>
        decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? Any([-1m, 0m, 0.1m, 0.001m, 10m, 1000m, 1m / 3m]) is var factor && Math.Abs(number) < 1e15m ? (number * factor).ToString(CultureInfo.InvariantCulture) : text + "0"
            : text;

    private string Without(string text)
    {
        var members = JsonNode.Parse(text)!.AsObject();
        if (members.Count > 0)
            members.Remove(Any([.. members.Select(member => member.Key)]));
        return members.ToJsonString();
    }

    private byte[] BytesChanged(byte[] bytes)
    {
        if (bytes.Length == 0)
            return bytes;
        var (at, length) = (Below(bytes.Length), 1 + Below(20));
        var end = Math.Min(bytes.Length, at + length);
        return Below(6) switch
        {
            0 => [.. bytes[..at], (byte)Below(256), .. bytes[(at + 1)..]],
            1 => bytes[..at],
            2 => [.. bytes[..at], .. bytes[end..]],
            3 => [.. bytes[..end], .. bytes[at..]],
            4 => [.. bytes[..at], .. Encoding.UTF8.GetBytes(Any(Junk)), .. bytes[at..]],
            _ => [.. bytes[..at], (byte)Any("{}[]\",:\\/0eE-+.\n"), .. bytes[at..]],
        };
    }

    private static HostileBody Plain(byte[] bytes, string? contentType) => new(bytes, contentType, null, bytes);

    private static byte[] Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest))
            gzip.Write(bytes);
        return packed.ToArray();
    }

    private int Below(int count) => (int)_chance.Next((uint)count);

    private T Any<T>(IReadOnlyList<T> items) => items[Below(items.Count)];

    private char Any(string letters) => letters[Below(letters.Length)];
}
