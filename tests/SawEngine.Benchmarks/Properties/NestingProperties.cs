using SawEngine.Solvers.Nesting;
using SawEngine.Tests.Nesting;

namespace SawEngine.Benchmarks.Properties;

/// <summary>The properties of nesting on many random problems; what is found wrong is said with the seed that shows it.</summary>
internal static class NestingProperties
{
    private const string Usage = "properties nesting [--problems N] [--small N] [--seed N] [--largest [NAME...]]";

    /// <summary>Runs the properties; 1 where one does not hold, 2 where the command makes no sense.</summary>
    public static int Run(IEnumerable<string> args)
    {
        try
        {
            var options = new CommandOptions(args, "--problems", "--small", "--seed", "--largest");
            if (options.IsGiven("--largest"))
                return CancellationMeasure.Run(options.All("--largest")) > 0 ? 1 : 0;
            var first = (int)options.Number("--seed", 0);
            var faults = Check("problems", first, (int)options.Number("--problems", 10_000), NestProperties.Faults)
                + Check("small problems against all nests", first, (int)options.Number("--small", 2_000), (seed, compared) => NestProperties.FaultsOfBound(new ColumnNester(), seed, compared));
            return faults > 0 ? 1 : 0;
        }
        catch (FormatException problem)
        {
            Report.Say($"{problem.Message}");
            Report.Say($"{Usage}");
            return 2;
        }
    }

    private static int Check(string name, int first, int count, Func<int, Dictionary<string, int>, IEnumerable<string>> faultsOf)
    {
        var compared = new Dictionary<string, int>(StringComparer.Ordinal);
        var faults = 0;
        for (var seed = first; seed < first + count; seed++)
        {
            foreach (var fault in faultsOf(seed, compared))
            {
                Report.Say($"!!! WRONG: seed {seed}: {fault}");
                faults++;
            }
        }
        Report.Say($"{name}: {count} from seed {first}, {faults} faults; compared: {string.Join(", ", compared.OrderBy(one => one.Key, StringComparer.Ordinal).Select(one => $"{one.Key} {one.Value}"))}");
        return faults;
    }
}
