using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using SawEngine.Benchmarks.Quality;
using SawEngine.Benchmarks.Quality.Generators;

namespace SawEngine.Benchmarks.Peers;

/// <summary>
/// A peer in a process of its own, so that one that runs on can be ended: the problem goes in as JSON, the answer comes out on one marked line,
/// since a solver may print to standard output itself.
/// </summary>
internal static class PeerProcess
{
    /// <summary>The first word of the command line of such a process.</summary>
    public const string Verb = "peer";

    private const string Mark = "answer: ";

    /// <summary>Time beyond the limit for start, warm-up and building the model.</summary>
    private static readonly TimeSpan Grace = TimeSpan.FromSeconds(30);

    private static readonly TimeSpan WarmUpTime = TimeSpan.FromSeconds(1);

    /// <summary>Lets a peer solve a problem in a process of its own.</summary>
    public static async Task<PeerAnswer> Ask(Peer peer, BarProblem problem, double seconds)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(PeerProcess).Assembly.Location, Verb, peer.Name, seconds.ToString(CultureInfo.InvariantCulture)])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        using var deadline = new CancellationTokenSource(TimeSpan.FromSeconds(seconds) + Grace);
        var watch = Stopwatch.StartNew();
        try
        {
            var output = process.StandardOutput.ReadToEndAsync(deadline.Token);
            var errors = process.StandardError.ReadToEndAsync(deadline.Token);
            await process.StandardInput.WriteAsync(JsonSerializer.Serialize(problem));
            process.StandardInput.Close();
            var answer = (await output).Split('\n').LastOrDefault(line => line.StartsWith(Mark, StringComparison.Ordinal));
            return answer is null
                ? new(null, watch.Elapsed.TotalSeconds, $"broke down: {(await errors).Split('\n')[0]}")
                : JsonSerializer.Deserialize<PeerAnswer>(answer[Mark.Length..])!;
        }
        catch (OperationCanceledException)
        {
            return new(null, watch.Elapsed.TotalSeconds, "ran on and was ended");
        }
        finally
        {
            if (!process.HasExited)
                process.Kill(entireProcessTree: true);
        }
    }

    /// <summary>What the process itself does.</summary>
    public static int Answer(string name, string seconds)
    {
        using var input = Report.StandardInput();
        var problem = JsonSerializer.Deserialize<BarProblem>(input)!;
        var peer = NestingPeers.All.First(one => one.Name == name);
        var limit = double.Parse(seconds, CultureInfo.InvariantCulture);
        WarmUp(peer);
        // A solver may have left a line of its own open.
        Report.Say($"\n{Mark}{JsonSerializer.Serialize(Solve(peer, problem, limit))}");
        return 0;
    }

    private static PeerAnswer Solve(Peer peer, BarProblem problem, double seconds)
    {
        var watch = Stopwatch.StartNew();
        try
        {
            var nest = peer.Solve(problem, seconds);
            return new(nest, watch.Elapsed.TotalSeconds, nest is null ? "nothing found" : null);
        }
        catch (NotSupportedException reason)
        {
            return new(null, watch.Elapsed.TotalSeconds, reason.Message);
        }
    }

    /// <summary>Small problems, until the runtime has compiled what is hot.</summary>
    private static void WarmUp(Peer peer)
    {
        var watch = Stopwatch.StartNew();
        for (var seed = 1; watch.Elapsed < WarmUpTime; seed++)
            Solve(peer, ShopOrders.Of((4, 8, 2), LengthGrid.TenthMillimeter, seed), WarmUpTime.TotalSeconds);
    }
}
