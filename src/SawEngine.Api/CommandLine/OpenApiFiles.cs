using SawEngine.Api.Http;

namespace SawEngine.Api.CommandLine;

/// <summary>Saves both OpenAPI documents: <c>v1.json</c> (3.1) and <c>3.0/v1.json</c>.</summary>
internal static class OpenApiFiles
{
    public static async Task<int> Write(string directory, CommandIo io, CancellationToken cancellation)
    {
        var builder = WebApplication.CreateBuilder();
        SawEngineApi.Configure(builder);
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        await using var app = builder.Build();
        SawEngineApi.Map(app);
        await app.StartAsync(cancellation);
        using var client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
        await Save(client, OpenApiDocuments.Path, Path.Combine(directory, "v1.json"), cancellation);
        await Save(client, OpenApiDocuments.Path30, Path.Combine(directory, "3.0", "v1.json"), cancellation);
        await app.StopAsync(cancellation);
        return Commands.Done;
    }

    private static async Task Save(HttpClient client, string path, string file, CancellationToken cancellation)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        var document = await client.GetStringAsync(path, cancellation);
        await File.WriteAllTextAsync(file, document.ReplaceLineEndings("\n").TrimEnd() + "\n", cancellation);
    }
}
