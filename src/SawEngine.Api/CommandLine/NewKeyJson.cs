namespace SawEngine.Api.CommandLine;

/// <summary>A new key.</summary>
/// <param name="Id">Who it is for: the setting <c>Id</c>.</param>
/// <param name="Key">The key: for the caller alone.</param>
/// <param name="Sha256">Its hash: the setting <c>Sha256</c>.</param>
internal sealed record NewKeyJson(string Id, string Key, string Sha256);
