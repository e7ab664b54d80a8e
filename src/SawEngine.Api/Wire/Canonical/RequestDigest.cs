using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace SawEngine.Api.Wire.Canonical;

/// <summary>What stands for a request: equal for requests that mean the same.</summary>
public static class RequestDigest
{
    /// <summary>SHA-256 of a request with defaults filled, lists sorted by id, in canonical form: <c>sha-256:</c> and 64 hexadecimal digits.</summary>
    public static string Of<T>(T request)
    {
        var canonical = CanonicalJson.Of(JsonSerializer.SerializeToElement(request, WireJson.Options), sortLists: true);
        return "sha-256:" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(canonical)));
    }
}
