using System.Diagnostics;
using SawEngine.Tests.Scheduling;

namespace SawEngine.Benchmarks.Properties;

/// <summary>The properties of scheduling on many random problems; what is found wrong is said with the seed that shows it.</summary>
internal static class SchedulingProperties
{
    private const string Usage = "properties scheduling [--problems N] [--seed N] [--features NAME...] [--each] [--show N] [--largest]";

    /// <summary>Runs the properties; 1 where one does not hold, 2 where the command makes no sense.</summary>
    public static int Run(IEnumerable<string> args)
    {
        try
        {
            var options = new CommandOptions(args, "--problems", "--seed", "--features", "--each", "--show", "--largest");
            if (options.IsGiven("--largest"))
                return VerifierMeasure.Run() > 0 ? 1 : 0;
            var (first, count, show) = ((int)options.Number("--seed", 0), (int)options.Number("--problems", 1_000), (int)options.Number("--show", 20));
            var features = options.IsGiven("--features") ? options.All("--features").Aggregate(ShopFeatures.None, (all, name) => all | Feature(name)) : ShopFeatures.All;
            var runs = options.IsGiven("--each") ? Enum.GetValues<ShopFeatures>().Where(feature => features.HasFlag(feature)) : [features];
            return runs.Sum(run => Check(run, first, count, show)) > 0 ? 1 : 0;
        }
        catch (FormatException problem)
        {
            Report.Say($"{problem.Message}");
            Report.Say($"{Usage}");
            return 2;
        }
    }

    private static ShopFeatures Feature(string name) => Enum.TryParse<ShopFeatures>(name, ignoreCase: true, out var feature)
        ? feature
        : throw new FormatException($"'{name}' is not a feature; these are: {string.Join(' ', Enum.GetNames<ShopFeatures>())}.");

    private static int Check(ShopFeatures features, int first, int count, int show)
    {
        var compared = new Dictionary<string, int>(StringComparer.Ordinal);
        var kinds = new Dictionary<string, int>(StringComparer.Ordinal);
        var (faulty, clock) = (0, Stopwatch.StartNew());
        for (var seed = first; seed < first + count; seed++)
        {
            var faults = ScheduleProperties.Faults(seed, features, compared);
            faulty += faults.Count > 0 ? 1 : 0;
            foreach (var fault in faults)
            {
                if (kinds.Values.Sum() < show)
                    Report.Say($"!!! WRONG: seed {seed}: {fault}");
                var kind = fault.Split(':')[0];
                kinds[kind] = kinds.GetValueOrDefault(kind) + 1;
            }
        }
        Report.Say($"{features}: {count} problems from seed {first}, {kinds.Values.Sum()} faults in {faulty} problems, {clock.Elapsed.TotalSeconds:0.0} s");
        Say("faults", kinds);
        Say("compared", compared);
        return kinds.Values.Sum();
    }

    private static void Say(string what, Dictionary<string, int> counts)
    {
        if (counts.Count > 0)
            Report.Say($"  {what}: {string.Join(", ", counts.OrderBy(one => one.Key, StringComparer.Ordinal).Select(one => $"{one.Key} {one.Value}"))}");
    }
}
