using System.Text.Json;

namespace SawEngine.Benchmarks.Quality;

/// <summary>
/// A set in a file, one JSON object a line: <c>id</c>; <c>p[job]</c> (on <c>m</c> machines alike) or <c>p[job][machine]</c>, null or -1
/// where the job cannot run; <c>setup[machine][before][job]</c> or <c>setup[before][job]</c>; <c>setup_initial[job]</c>, none before the
/// first job without it; <c>r</c>, <c>d</c>, <c>w</c> by job (0, 0, 1); <c>objective</c>, or what <c>problem</c> ends with; <c>best</c> or
/// <c>expected</c>, and <c>proven</c>; else <c>best_from_memory</c>.
/// </summary>
internal static class SchedulingSetFile
{
    public static SchedulingSet Read(string path)
    {
        var read = File.ReadLines(path).Where(line => line.Trim().Length > 0).Select(Instance).ToList();
        return new(Path.GetFileNameWithoutExtension(path), [.. read.OfType<SchedulingInstance>()], read.Count(instance => instance is null));
    }

    /// <summary>Null where the problem is not one of a saw shop: a flow shop, preemption, number of late jobs.</summary>
    private static SchedulingInstance? Instance(string line)
    {
        using var document = JsonDocument.Parse(line);
        var instance = document.RootElement;
        var name = Member(instance, "id")?.GetString() ?? throw new FormatException("A problem has no 'id'.");
        var kind = Member(instance, "objective")?.GetString() ?? Objective(Member(instance, "problem")?.GetString() ?? "");
        var expected = Member(instance, "expected");
        if (Member(instance, "p") is not { } p || kind is null || expected is { ValueKind: not JsonValueKind.Number })
            return null;
        var stated = Stated(instance, p, kind);
        var (best, fromMemory) = (Number(Member(instance, "best") ?? expected), Number(Member(instance, "best_from_memory")));
        var proved = best is not null && (Member(instance, "proven")?.GetBoolean() ?? true);
        return new(name, stated, stated.ToScheduleProblem(), best ?? fromMemory, proved);
    }

    private static string? Objective(string problem) => (problem.Split('|') is [var machines, var rules, var goal] ? (machines, rules, goal) : default) switch
    {
        ("F2", _, _) or (_, "pmtn" or "calendar" or "h1", _) or (_, _, null) => null,
        (_, _, "sum T" or "sum wT" or "sum C" or "sum wC") => "weighted_tardiness",
        (_, _, "Cmax") or ("P", "", "Cmax online list") => "makespan",
        _ => null,
    };

    private static MachineProblem Stated(JsonElement instance, JsonElement p, string kind)
    {
        var alike = p[0].ValueKind == JsonValueKind.Number;
        var machines = alike ? Member(instance, "m")?.GetInt32() ?? 1 : p[0].GetArrayLength();
        var seconds = p.EnumerateArray().Select(job => alike
            ? [.. Enumerable.Repeat((long?)job.GetInt64(), machines)]
            : job.EnumerateArray().Select(Eligible).ToArray()).ToArray();
        var initial = Member(instance, "setup_initial") is { } row ? Enumerable.Repeat(Row(row), machines).ToArray() : null;
        return new(
            seconds,
            Member(instance, "setup") is { } setUp ? SetUp(setUp, machines) : null,
            initial,
            Row(instance, "r", seconds.Length, 0),
            Row(instance, "d", seconds.Length, 0),
            Row(instance, "w", seconds.Length, 1),
            kind == "makespan");
    }

    private static long[][][] SetUp(JsonElement setUp, int machines) => setUp[0][0].ValueKind == JsonValueKind.Number
        ? [.. Enumerable.Repeat(Table(setUp), machines)]
        : [.. setUp.EnumerateArray().Select(Table)];

    private static long[][] Table(JsonElement table) => [.. table.EnumerateArray().Select(Row)];

    private static long[] Row(JsonElement row) => [.. row.EnumerateArray().Select(value => value.GetInt64())];

    private static long[] Row(JsonElement instance, string member, int jobs, long usual) =>
        Member(instance, member) is { } row ? Row(row) : [.. Enumerable.Repeat(usual, jobs)];

    private static long? Eligible(JsonElement seconds) =>
        seconds.ValueKind == JsonValueKind.Null || seconds.GetInt64() < 0 ? null : seconds.GetInt64();

    private static long? Number(JsonElement? value) => value is { } number ? (long)number.GetDecimal() : null;

    private static JsonElement? Member(JsonElement instance, string member) =>
        instance.TryGetProperty(member, out var value) && value.ValueKind != JsonValueKind.Null ? value : null;
}
