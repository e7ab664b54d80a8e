using System.Diagnostics;
using System.Text.Json.Nodes;

namespace SawEngine.Api.Tests.Http;

/// <summary>The program as it is started in a container.</summary>
public sealed class ServiceProcessTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Bad_keys_stop_the_start_with_a_message()
    {
        using var service = Start(("ApiKeys__0__Id", "erp"), ("ApiKeys__0__Sha256", "no hash"));

        await service.WaitForExitAsync().WaitAsync(Patience);

        Assert.Equal(2, service.ExitCode);
        Assert.StartsWith("ApiKeys:0:Sha256 must be", await service.StandardError.ReadToEndAsync(), StringComparison.Ordinal);
        Assert.Empty(await service.StandardOutput.ReadToEndAsync());
    }

    [Theory]
    [InlineData("http://0.0.0.0:0", true)]
    [InlineData("http://127.0.0.1:0", false)]
    public async Task Open_service_warns_where_others_can_reach_it(string url, bool warns)
    {
        using var service = Start(("ASPNETCORE_URLS", url));
        try
        {
            var lines = new List<JsonNode>();
            while (await service.StandardOutput.ReadLineAsync().WaitAsync(Patience) is { } line)
            {
                lines.Add(JsonNode.Parse(line)!);
                if ((string?)lines[^1]["address"] is { } address)
                    _ = AskOnceStarted(address.Replace("0.0.0.0", "127.0.0.1", StringComparison.Ordinal));
                if ((string?)lines[^1]["category"] == "SawEngine.Requests")
                    break;
            }
            Assert.Equal(warns, lines.Any(line => (string?)line["level"] == "Warning" && ((string)line["message"]!).Contains("ApiKeys__0__Sha256", StringComparison.Ordinal)));
        }
        finally
        {
            service.Kill();
        }
    }

    /// <summary>The line of this request ends the reading: it comes after all lines of the start.</summary>
    private static async Task AskOnceStarted(string address)
    {
        using var client = new HttpClient();
        await Task.Delay(1_000);
        using var answer = await client.GetAsync(new Uri(address + "/v1/service"));
        Assert.Equal(200, (int)answer.StatusCode);
    }

    private static Process Start(params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "SawEngine.Api.dll")])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in environment)
            start.Environment[name] = value;
        return Process.Start(start)!;
    }
}
