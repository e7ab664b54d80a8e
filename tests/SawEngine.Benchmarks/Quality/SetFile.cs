using System.Text.Json;
using SawEngine.Core.Stock;

namespace SawEngine.Benchmarks.Quality;

/// <summary>
/// A set in a file, one JSON object a line: <c>name</c>; <c>capacity</c> (fewest bars of it) or <c>stock[{length, available, cost}]</c>
/// (cost: the length where none is given); <c>items[{length, demand}]</c>; <c>optimal</c> and <c>lower_bound</c> where known. One unit is a millimeter.
/// </summary>
internal static class SetFile
{
    public static NestingSet Read(string path) =>
        new(Path.GetFileNameWithoutExtension(path), [.. File.ReadLines(path).Where(line => line.Trim().Length > 0).Select(Instance)]);

    private static NestingInstance Instance(string line, int place)
    {
        using var document = JsonDocument.Parse(line);
        var instance = document.RootElement;
        var name = Member(instance, "name")?.GetString() ?? $"{place + 1}";
        var problem = new BarProblem(0, 0, Bars(instance, name), [.. Required(instance, "items", name).EnumerateArray().Select(item => Piece(item, name))]);
        return new(name, problem.ToNestProblem(), Micros(instance, "optimal"), Micros(instance, "lower_bound"));
    }

    private static List<OfferedBar> Bars(JsonElement instance, string name) =>
        Member(instance, "capacity") is { } capacity
            ? [new(StockKind.Purchasable, Millionths(capacity), null, BarProblem.OneBar)]
            : [.. Required(instance, "stock", name).EnumerateArray().Select(bar => Bar(bar, name))];

    private static OfferedBar Bar(JsonElement bar, string name)
    {
        var available = Member(bar, "available")?.GetInt32();
        var length = Required(bar, "length", name);
        var kind = available is null ? StockKind.Purchasable : StockKind.Bar;
        return new(kind, Millionths(length), available, Millionths(Member(bar, "cost") ?? length));
    }

    private static WantedPiece Piece(JsonElement item, string name) => new(Millionths(Required(item, "length", name)), Required(item, "demand", name).GetInt32());

    private static long? Micros(JsonElement instance, string member) => Member(instance, member) is { } value ? Millionths(value) : null;

    /// <summary>Nanometers of a length in millimeters, or micro-units of a cost.</summary>
    private static long Millionths(JsonElement value) => (long)(value.GetDecimal() * BarProblem.Unit);

    private static JsonElement Required(JsonElement instance, string member, string name) =>
        Member(instance, member) ?? throw new FormatException($"'{name}' is no nesting problem: no '{member}'.");

    private static JsonElement? Member(JsonElement instance, string member) =>
        instance.TryGetProperty(member, out var value) && value.ValueKind != JsonValueKind.Null ? value : null;
}
