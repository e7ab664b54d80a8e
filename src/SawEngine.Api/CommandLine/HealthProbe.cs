namespace SawEngine.Api.CommandLine;

/// <summary>Asks a running service whether it is well; for containers without a shell.</summary>
internal static class HealthProbe
{
    /// <summary>What is asked where the URL names the service alone.</summary>
    private const string LivePath = "/health/live";

    public static async Task<int> Run(string url, CommandIo io, CancellationToken cancellation)
    {
        if (!Uri.TryCreate(url, UriKind.Absolute, out var address) || address.Scheme is not ("http" or "https"))
        {
            await io.Error.WriteLineAsync($"{url} is not the URL of a health probe.");
            return Commands.BadInput;
        }
        if (address.AbsolutePath == "/")
            address = new(address, LivePath);
        using var client = new HttpClient { Timeout = TimeSpan.FromSeconds(5) };
        try
        {
            using var answer = await client.GetAsync(address, cancellation);
            return answer.IsSuccessStatusCode ? Commands.Done : Commands.Nothing;
        }
        catch (Exception unreachable) when (unreachable is HttpRequestException or TaskCanceledException)
        {
            await io.Error.WriteLineAsync($"{url} does not answer: {unreachable.Message}");
            return Commands.Nothing;
        }
    }
}
