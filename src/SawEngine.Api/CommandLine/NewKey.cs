using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using SawEngine.Api.Http.Security;
using SawEngine.Api.Wire;

namespace SawEngine.Api.CommandLine;

/// <summary>Makes a new random key and its hash. Neither is kept.</summary>
internal static class NewKey
{
    /// <summary>Lets a scan of files find keys that do not belong there.</summary>
    private const string Prefix = "saw_";
    private const int RandomBytes = 32;

    public static async Task<int> Write(string id, CommandIo io, CancellationToken cancellation)
    {
        if (!ApiKey.IsId(id))
        {
            await io.Error.WriteLineAsync("The id of a key has " + ApiKey.IdForm + ".");
            return Commands.BadInput;
        }
        var key = Prefix + Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(RandomBytes));
        var made = new NewKeyJson(id, key, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(key))));
        await JsonSerializer.SerializeAsync(io.Output, made, WireJson.Options, cancellation);
        return Commands.Done;
    }
}
