using System.Security.Cryptography;
using System.Text;

namespace SawEngine.Api.Http.Security;

/// <summary>The keys that are let in, from the settings <c>ApiKeys:n:Id</c> and <c>ApiKeys:n:Sha256</c>.</summary>
internal sealed class ApiKeys(IReadOnlyList<ApiKey> keys)
{
    private const string Section = "ApiKeys";
    private const int HashDigits = 2 * SHA256.HashSizeInBytes;

    /// <summary>Whether a key is needed.</summary>
    public bool AreRequired => keys.Count > 0;

    /// <summary>Reads the settings.</summary>
    /// <exception cref="InvalidConfigurationException">A setting is missing, misspelt, malformed or doubled.</exception>
    public static ApiKeys Read(IConfiguration configuration)
    {
        var section = configuration.GetSection(Section);
        if (!string.IsNullOrEmpty(section.Value))
            throw new InvalidConfigurationException($"{Section} must be a list: state {Section}:0:Id and {Section}:0:Sha256.");
        var keys = section.GetChildren().Select(Read).ToList();
        var doubled = keys.GroupBy(key => Convert.ToHexString(key.Sha256), StringComparer.Ordinal).FirstOrDefault(same => same.Count() > 1);
        if (doubled is not null)
            throw new InvalidConfigurationException($"{Section}: the same Sha256 stands more than once (Id {string.Join(", ", doubled.Select(key => key.Id))}).");
        return new(keys);
    }

    /// <summary>Id of the key; null where it is unknown. The work is the same for every text of a length, whichever key it is or is not.</summary>
    public string? Find(string presented)
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(presented));
        string? found = null;
        foreach (var key in keys)
            found = CryptographicOperations.FixedTimeEquals(hash, key.Sha256) ? key.Id : found;
        return found;
    }

    private static ApiKey Read(IConfigurationSection entry)
    {
        if (entry.GetChildren().FirstOrDefault(setting => !IsKnown(setting.Key)) is { } unknown)
            throw new InvalidConfigurationException($"{unknown.Path} is not known; a key has Id and Sha256.");
        var (id, hash) = (entry[nameof(ApiKey.Id)] ?? "", entry[nameof(ApiKey.Sha256)] ?? "");
        if (!ApiKey.IsId(id))
            throw new InvalidConfigurationException($"{entry.Path}:Id must have {ApiKey.IdForm}.");
        if (hash.Length != HashDigits || !hash.All(char.IsAsciiHexDigit))
            throw new InvalidConfigurationException($"{entry.Path}:Sha256 must be the SHA-256 of the key as 64 hexadecimal digits; the verb `key` prints one.");
        return new(id, Convert.FromHexString(hash));
    }

    private static bool IsKnown(string setting) =>
        setting.Equals(nameof(ApiKey.Id), StringComparison.OrdinalIgnoreCase) || setting.Equals(nameof(ApiKey.Sha256), StringComparison.OrdinalIgnoreCase);
}
