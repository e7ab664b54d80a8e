using System.Globalization;
using SawEngine.Core.Nesting;

namespace SawEngine.Core.Planning;

/// <summary>Nests that were made before: the same lines from the same stock under the same rules are nested once.</summary>
internal sealed class KnownNests
{
    private readonly Dictionary<string, GroupNest> nests = new(StringComparer.Ordinal);

    /// <summary>The known nest of a problem, or a new one.</summary>
    public GroupNest Of(NestProblem problem, string sawClass, Func<GroupNest> nest)
    {
        var key = string.Create(CultureInfo.InvariantCulture, $"{sawClass}\n{problem.Remnants?.MostNew}\n")
            + string.Join('\n', problem.Lines.Select(line => line.Ref)) + "\n\n"
            + string.Join('\n', problem.Stock.Select(item => string.Create(CultureInfo.InvariantCulture, $"{item.StockId}\n{item.Quantity}")));
        if (!nests.TryGetValue(key, out var known))
            nests.Add(key, known = nest());
        return known;
    }
}
