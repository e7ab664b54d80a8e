namespace SawEngine.Benchmarks;

/// <summary>One client, one call after the other: from process start to the first answer, then warm.</summary>
internal static class Latency
{
    private const int WarmUpCalls = 20;

    public static async Task Run(string path, string file, int calls)
    {
        var body = await File.ReadAllBytesAsync(file);
        using var service = await ServiceProcess.Start(path, body);
        for (var i = 0; i < WarmUpCalls; i++)
            await service.Post(path, body);
        var taken = new List<ServiceProcess.Call>(calls);
        for (var i = 0; i < calls; i++)
            taken.Add(await service.Post(path, body));
        var (total, engine, rest) = (taken.Select(call => call.TotalMs), taken.Select(call => call.EngineMs), taken.Select(call => call.TotalMs - call.EngineMs));
        Report.Say($"warm, {calls} calls: median {Report.Percentile(total, 0.5):0.00} ms, 99th percentile {Report.Percentile(total, 0.99):0.00} ms");
        Report.Say($"of these in the engine: median {Report.Percentile(engine, 0.5):0.00} ms; beyond it: median {Report.Percentile(rest, 0.5):0.00} ms, 99th percentile {Report.Percentile(rest, 0.99):0.00} ms");
    }
}
