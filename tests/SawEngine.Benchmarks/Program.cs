using System.Globalization;
using BenchmarkDotNet.Running;
using SawEngine.Benchmarks;
using SawEngine.Benchmarks.Peers;
using SawEngine.Benchmarks.Properties;
using SawEngine.Benchmarks.Quality;

// `quality nesting` and `quality scheduling` measure solution quality, `properties nesting` and `properties scheduling` hold random nests and schedules against what must hold of all, `peers nesting` and `peers scheduling` set it beside general methods (those of nesting each by `peer` in a process of its own); `latency PATH FILE [CALLS]` and `throughput PATH FILE [SECONDS [CLIENTS]]` measure the service as a caller sees it; anything else goes to the benchmark runner.
switch (args)
{
    case ["quality", "nesting", ..]:
        return NestingQuality.Run(args.Skip(2));
    case ["quality", "scheduling", ..]:
        return SchedulingQuality.Run(args.Skip(2));
    case ["properties", "nesting", ..]:
        return NestingProperties.Run(args.Skip(2));
    case ["properties", "scheduling", ..]:
        return SchedulingProperties.Run(args.Skip(2));
    case ["peers", "scheduling", ..]:
        return SchedulingComparison.Run(args.Skip(2));
    case ["peers", "nesting", ..]:
        return await PeerComparison.Run(args.Skip(2));
    case [PeerProcess.Verb, var name, var seconds]:
        return PeerProcess.Answer(name, seconds);
    case ["latency", var path, var file, ..]:
        await Latency.Run(path, file, Number(3, 200));
        break;
    case ["throughput", var path, var file, ..]:
        await Throughput.Run(path, file, Number(3, 10), Number(4, 4));
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(PlanBenchmarks).Assembly).Run(args);
        break;
}
return 0;

int Number(int place, int usual) => args.Length > place ? int.Parse(args[place], CultureInfo.InvariantCulture) : usual;
