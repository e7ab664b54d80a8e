using System.Diagnostics;

namespace SawEngine.Benchmarks;

/// <summary>Several clients, each with one call after the other: answers per second.</summary>
internal static class Throughput
{
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(5);

    public static async Task Run(string path, string file, int seconds, int clients)
    {
        var body = await File.ReadAllBytesAsync(file);
        using var service = await ServiceProcess.Start(path, body);
        await Load(service, path, body, WarmUp, clients);
        var calls = await Load(service, path, body, TimeSpan.FromSeconds(seconds), clients);
        var times = calls.Select(call => call.TotalMs);
        Report.Say($"{clients} clients, {seconds} s: {calls.Count / (double)seconds:0} answers per second, median {Report.Percentile(times, 0.5):0.00} ms, 99th percentile {Report.Percentile(times, 0.99):0.00} ms");
    }

    private static async Task<List<ServiceProcess.Call>> Load(ServiceProcess service, string path, byte[] body, TimeSpan time, int clients)
    {
        var watch = Stopwatch.StartNew();
        var loads = Enumerable.Range(0, clients).Select(_ => Task.Run(async () =>
        {
            var calls = new List<ServiceProcess.Call>();
            while (watch.Elapsed < time)
                calls.Add(await service.Post(path, body));
            return calls;
        }));
        return [.. (await Task.WhenAll(loads)).SelectMany(calls => calls)];
    }
}
