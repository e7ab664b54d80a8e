using System.Buffers;
using System.Text.Json;
using System.Text.Unicode;

namespace SawEngine.Api.Wire;

/// <summary>Reads a body, or finds every fault of its shape.</summary>
internal static class RequestReader
{
    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    public static ReadResult<T> Read<T>(ReadOnlyMemory<byte> body, bool lenient)
    {
        if (body.Span.StartsWith(ByteOrderMark))
            body = body[ByteOrderMark.Length..];
        if (!Utf8.IsValid(body.Span))
            return new(FaultList.Of(JsonPointer.Root, FaultCode.InvalidUtf8, "The body is not valid UTF-8."));
        try
        {
            using var document = JsonDocument.Parse(body, new JsonDocumentOptions { MaxDepth = Limits.Depth });
            return Read<T>(document.RootElement, lenient);
        }
        catch (JsonException syntax)
        {
            return new(SyntaxFault(body.Span, syntax));
        }
    }

    private static ReadResult<T> Read<T>(JsonElement root, bool lenient)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using var copy = new Utf8JsonWriter(buffer);
        var walk = new ShapeWalk(lenient, copy);
        walk.Visit(root, WireJson.Options.GetTypeInfo(typeof(T)));
        if (walk.Faults.Count > 0)
            return new(walk.Faults);
        copy.Flush();
        return new(JsonSerializer.Deserialize<T>(buffer.WrittenSpan, WireJson.Options)!, walk.Ignored);
    }

    private static FaultList SyntaxFault(ReadOnlySpan<byte> body, JsonException syntax)
    {
        var place = $"line {(syntax.LineNumber ?? 0) + 1}, byte {(syntax.BytePositionInLine ?? 0) + 1}";
        return IsTooDeep(body)
            ? FaultList.Of(JsonPointer.Root, FaultCode.TooDeep, $"The body is nested deeper than {Limits.Depth} levels at {place}.")
            : FaultList.Of(JsonPointer.Root, FaultCode.InvalidJson, body.IsEmpty ? "The body is empty." : $"The body is not JSON: the fault is at {place}.");
    }

    private static bool IsTooDeep(ReadOnlySpan<byte> body)
    {
        var reader = new Utf8JsonReader(body, new JsonReaderOptions { MaxDepth = Limits.Depth + 1 });
        try
        {
            while (reader.Read())
            {
                if (reader.CurrentDepth >= Limits.Depth && reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
                    return true;
            }
        }
        catch (JsonException)
        {
            return false;
        }
        return false;
    }
}
