using System.Diagnostics;
using System.Net.Http.Headers;
using SawEngine.Api;

namespace SawEngine.Benchmarks;

/// <summary>The service as a process of its own, as a caller meets it.</summary>
internal sealed class ServiceProcess : IDisposable
{
    private const string Address = "http://127.0.0.1:5081";

    private readonly Process _process;
    private readonly HttpClient _client = new() { BaseAddress = new(Address) };

    private ServiceProcess(Process process) => _process = process;

    /// <summary>Starts the service and posts until it gives a first answer.</summary>
    public static async Task<ServiceProcess> Start(string path, byte[] body)
    {
        var since = Stopwatch.StartNew();
        var start = new ProcessStartInfo("dotnet", [typeof(SawEngineApi).Assembly.Location, "--urls", Address]) { RedirectStandardOutput = true, RedirectStandardError = true };
        var service = new ServiceProcess(Process.Start(start)!);
        service._process.BeginOutputReadLine();
        service._process.BeginErrorReadLine();
        while (true)
        {
            try
            {
                await service.Post(path, body);
                Report.Say($"process start to first answer: {since.Elapsed.TotalSeconds:0.00} s");
                return service;
            }
            catch (HttpRequestException refused) when (refused.StatusCode is null && since.Elapsed < TimeSpan.FromSeconds(30))
            {
                await Task.Delay(20);
            }
            catch (HttpRequestException)
            {
                service.Dispose();
                throw;
            }
        }
    }

    /// <summary>Posts a body and reads the whole answer.</summary>
    public async Task<Call> Post(string path, byte[] body)
    {
        var watch = Stopwatch.StartNew();
        using var content = new ByteArrayContent(body) { Headers = { ContentType = new MediaTypeHeaderValue("application/json") } };
        using var response = await _client.PostAsync(path, content);
        response.EnsureSuccessStatusCode();
        await response.Content.ReadAsByteArrayAsync();
        return new(watch.Elapsed.TotalMilliseconds, EngineMs(response));
    }

    public void Dispose()
    {
        _process.Kill();
        _process.Dispose();
        _client.Dispose();
    }

    /// <summary>What the service says of its calculation by <c>Server-Timing</c>.</summary>
    private static double EngineMs(HttpResponseMessage response)
    {
        var text = response.Headers.TryGetValues("Server-Timing", out var values) ? values.First() : "engine;dur=0";
        return double.Parse(text[(text.IndexOf("dur=", StringComparison.Ordinal) + 4)..], System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>A call: milliseconds as the caller sees them, and of these in the engine.</summary>
    internal readonly record struct Call(double TotalMs, double EngineMs);
}
