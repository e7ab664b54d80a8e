using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.Stock;

/// <summary>What is said of bars that are nominally longer than planned on.</summary>
internal static class NominalLength
{
    /// <summary>A warning for each used item that is nominally longer than what is surely there, by stock id.</summary>
    public static IEnumerable<WarningJson> Warnings<T>(
        IReadOnlyList<T> stock, Func<T, string> idOf, Func<T, decimal?> nominalOf, IReadOnlySet<string> used, LengthScale scale)
        where T : IStatedLength =>
        Enumerable.Range(0, stock.Count)
            .Where(i => used.Contains(idOf(stock[i])) && nominalOf(stock[i]) is { } nominal && scale.Read(nominal) > scale.Read(stock[i]))
            .OrderBy(i => idOf(stock[i]), StringComparer.Ordinal)
            .Select(i => Warning(i, idOf(stock[i]), scale.Read(nominalOf(stock[i])!.Value) - scale.Read(stock[i]), scale));

    private static WarningJson Warning(int index, string stockId, Core.Quantities.Length extra, LengthScale scale) => new()
    {
        Code = WarningCode.NominalLengthNotPlanned,
        Pointer = $"#/stock/{index}/nominalLength",
        Detail = $"Each bar of {Quoted.Text(stockId)} is expected to be {ShortestDecimalConverter.Text(scale.Write(extra))} {WireEnum.Text(scale.Unit)} longer than planned on; its remainder will be.",
    };
}
