using BenchmarkDotNet.Attributes;
using Microsoft.Extensions.Logging.Abstractions;
using SawEngine.Api;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Benchmarks;

/// <summary>The operations on their own examples, without HTTP.</summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private static readonly IReadOnlyList<Operation> Operations = SawEngineApi.Operations(SawEngineApi.Nester(NullLoggerFactory.Instance));

    private Operation operation = null!;
    private byte[] body = [];

    [ParamsSource(nameof(Verbs))]
    public string Verb { get; set; } = "";

    public static IEnumerable<string> Verbs => Operations.Select(operation => operation.Verb);

    [GlobalSetup]
    public void Prepare()
    {
        operation = Operations.First(one => one.Verb == Verb);
        body = System.Text.Encoding.UTF8.GetBytes(operation.Example);
    }

    [Benchmark]
    public Outcome Example() => operation.Run(body, Preferences.None, CancellationToken.None);
}
