using BenchmarkDotNet.Running;
using SawEngine.Benchmarks;

// `latency FILE [CALLS]` measures the service as a caller sees it; anything else goes to the benchmark runner.
if (args is ["latency", var file, ..])
    return await Latency.Run(file, args.Length > 2 ? int.Parse(args[2], System.Globalization.CultureInfo.InvariantCulture) : 100);
BenchmarkSwitcher.FromAssembly(typeof(PlanBenchmarks).Assembly).Run(args);
return 0;
