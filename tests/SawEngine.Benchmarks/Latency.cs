using System.Diagnostics;
using System.Net.Http.Headers;
using SawEngine.Api;

namespace SawEngine.Benchmarks;

/// <summary>Starts the service as a process and posts a plan to it: from process start to the first answer, then warm, one client.</summary>
internal static class Latency
{
    private const string Address = "http://127.0.0.1:5081";
    private const int WarmUpCalls = 20;

    public static async Task<int> Run(string file, int calls)
    {
        var body = await File.ReadAllBytesAsync(file);
        using var client = new HttpClient { BaseAddress = new(Address) };
        var sinceStart = Stopwatch.StartNew();
        using var service = Process.Start(new ProcessStartInfo("dotnet", [typeof(SawEngineApi).Assembly.Location, "--urls", Address])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        service.BeginOutputReadLine();
        service.BeginErrorReadLine();
        try
        {
            await FirstAnswer(client, body, sinceStart);
            Say($"process start to first answer: {sinceStart.Elapsed.TotalSeconds:0.00} s");
            for (var i = 0; i < WarmUpCalls; i++)
                await Post(client, body);
            var times = new List<double>(calls);
            for (var i = 0; i < calls; i++)
                times.Add(await Post(client, body));
            times.Sort();
            Say($"warm, {calls} calls: median {times[calls / 2]:0.0} ms, 99th percentile {times[(int)Math.Ceiling(calls * 0.99) - 1]:0.0} ms");
            return 0;
        }
        finally
        {
            service.Kill();
        }
    }

    private static async Task FirstAnswer(HttpClient client, byte[] body, Stopwatch sinceStart)
    {
        while (true)
        {
            try
            {
                await Post(client, body);
                return;
            }
            catch (HttpRequestException refused) when (refused.StatusCode is null && sinceStart.Elapsed < TimeSpan.FromSeconds(30))
            {
                await Task.Delay(20);
            }
        }
    }

    private static async Task<double> Post(HttpClient client, byte[] body)
    {
        var watch = Stopwatch.StartNew();
        using var content = new ByteArrayContent(body) { Headers = { ContentType = new MediaTypeHeaderValue("application/json") } };
        using var response = await client.PostAsync("/v1/plans", content);
        response.EnsureSuccessStatusCode();
        await response.Content.ReadAsByteArrayAsync();
        return watch.Elapsed.TotalMilliseconds;
    }

    private static void Say(FormattableString text)
    {
#pragma warning disable RS0030 // The runner reports on the console.
        Console.WriteLine(FormattableString.Invariant(text));
#pragma warning restore RS0030
    }
}
