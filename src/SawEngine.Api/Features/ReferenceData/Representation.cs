using System.Security.Cryptography;
using System.Text.Json;
using Microsoft.Net.Http.Headers;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.ReferenceData;

/// <summary>An answer as bytes, with the tag that changes with them.</summary>
/// <param name="Bytes">The answer as JSON in UTF-8.</param>
/// <param name="Tag">Strong entity tag: the first half of the SHA-256 of the bytes.</param>
internal sealed record Representation(byte[] Bytes, EntityTagHeaderValue Tag)
{
    private const int TagBytes = 16;

    public static Representation Of(object answer)
    {
        var bytes = JsonSerializer.SerializeToUtf8Bytes(answer, answer.GetType(), WireJson.Options);
        return new(bytes, new($"\"{Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, TagBytes))}\""));
    }
}
