using System.Text.Json;
using SawEngine.Core.Scheduling;

namespace SawEngine.Benchmarks.Quality;

/// <summary>
/// A set in a file, one JSON object a line: <c>id</c>; <c>p[job]</c> (on <c>m</c> machines alike) or <c>p[job][machine]</c>, null or -1
/// where the job cannot run; <c>setup[machine][before][job]</c> or <c>setup[before][job]</c>; <c>setup_initial[job]</c>, none before the
/// first job without it; <c>r</c>, <c>d</c>, <c>w</c> by job (0, 0, 1); <c>shifts[[start, end]]</c>; <c>objective</c>, or what
/// <c>problem</c> ends with; <c>best</c>, <c>nonpreemptive_optimum</c> or <c>expected</c> (with shifts: <c>resumable</c> and
/// <c>non_resumable</c>, each a problem), and <c>proven</c>; else <c>best_from_memory</c>.
/// </summary>
internal static class SchedulingSetFile
{
    public static SchedulingSet Read(string path)
    {
        var read = File.ReadLines(path).Where(line => line.Trim().Length > 0).Select(Instances).ToList();
        return new(Path.GetFileNameWithoutExtension(path), [.. read.SelectMany(instances => instances)], read.Count(instances => instances.Count == 0));
    }

    /// <summary>None where the problem is not one of a saw shop: a flow shop, number of late jobs, largest lateness.</summary>
    private static List<SchedulingInstance> Instances(string line)
    {
        using var document = JsonDocument.Parse(line);
        var instance = document.RootElement;
        var name = Member(instance, "id")?.GetString() ?? throw new FormatException("A problem has no 'id'.");
        var kind = Member(instance, "objective")?.GetString() ?? Objective(Member(instance, "problem")?.GetString() ?? "");
        if (Member(instance, "p") is not { } p || kind is null)
            return [];
        var stated = Stated(instance, p, kind);
        var expected = Member(instance, "nonpreemptive_optimum") ?? Member(instance, "expected");
        if (expected is { ValueKind: JsonValueKind.Object } both)
            return
            [
                Proved(name + "_resumable", stated with { MayPause = true }, both.GetProperty("resumable").GetInt64()),
                Proved(name + "_non_resumable", stated, both.GetProperty("non_resumable").GetInt64()),
            ];
        var (best, fromMemory) = (Number(Member(instance, "best") ?? expected), Number(Member(instance, "best_from_memory")));
        var proved = best is not null && (Member(instance, "proven")?.GetBoolean() ?? true);
        return [new(name, stated, stated.ToScheduleProblem(), best ?? fromMemory, proved)];
    }

    private static SchedulingInstance Proved(string name, MachineProblem stated, long best) => new(name, stated, stated.ToScheduleProblem(), best, true);

    private static string? Objective(string problem)
    {
        var parts = problem.Split('|');
        return (parts[0], parts[^1]) switch
        {
            ("F2", _) => null,
            (_, "sum T" or "sum wT" or "sum C" or "sum wC") => "weighted_tardiness",
            (_, "Cmax" or "Cmax online list") => "makespan",
            _ => null,
        };
    }

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
            kind == "makespan",
            Member(instance, "shifts") is { } shifts ? [.. Table(shifts).Select(shift => new TimeWindow(shift[0], shift[1]))] : []);
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
