using System.Text.Json;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Grades;

/// <summary>
/// Reads the embedded grades. A row carries the data of one material: its own <c>names</c>, its <c>equivalents</c> in another standard,
/// which take the values over, and <c>near</c> ones, for which every value is from memory.
/// </summary>
internal static class GradeCatalogData
{
    private const string ResourceName = "grades.json";

    public static GradeCatalog Read()
    {
        using var stream = typeof(GradeCatalogData).Assembly.GetManifestResourceStream(ResourceName)
            ?? throw new InvalidOperationException($"The resource {ResourceName} is missing.");
        using var document = JsonDocument.Parse(stream);
        var root = document.RootElement;
        var sources = root.GetProperty("sources").EnumerateObject().ToDictionary(item => item.Name, item => Source(item.Value), StringComparer.Ordinal);
        var unitPowers = UnitPowers(root.GetProperty("unitPowerByHardness"), sources).ToDictionary(table => table.Group, StringComparer.Ordinal);
        var grades = root.GetProperty("rows").EnumerateArray().SelectMany(row => GradesOf(row, sources, unitPowers));
        var chipGroups = root.GetProperty("chipGroups").EnumerateArray().Select(item => new ChipGroup(item.GetProperty("group").GetString()!, Strings(item.GetProperty("cautionCodes"))));
        return new(root.GetProperty("dataVersion").GetString()!, [.. grades], [.. chipGroups], [.. unitPowers.Values]);
    }

    private static IEnumerable<Grade> GradesOf(
        JsonElement row, Dictionary<string, (string Text, Confidence Confidence)> sources, Dictionary<string, UnitPowerByHardness> unitPowers)
    {
        var grade = OwnGrade(row, sources, unitPowers);
        yield return grade;
        foreach (var names in NameLists(row, "equivalents"))
            yield return TakenOver(grade, names, Confidence.CommonPractice);
        foreach (var names in NameLists(row, "near"))
            yield return TakenOver(grade, names, Confidence.FromMemory);
    }

    private static Grade OwnGrade(
        JsonElement row, Dictionary<string, (string Text, Confidence Confidence)> sources, Dictionary<string, UnitPowerByHardness> unitPowers)
    {
        var names = Strings(row.GetProperty("names"));
        var hardness = row.GetProperty("hardnessHb");
        return new Grade
        {
            Designation = names[0],
            Designations = names,
            Group = row.GetProperty("group").GetString()!,
            Condition = row.GetProperty("condition").GetString()!,
            LowestHardnessHb = hardness[0].GetDecimal(),
            HighestHardnessHb = hardness[1].GetDecimal(),
            Density = Value("densityKgPerM3", value => new Density(value)),
            ReferenceBladeSpeed = Value("bladeSpeedMPerMin", value => new Speed(value)),
            ReferenceCuttingRate = Value("cuttingRateCm2PerMin", value => new CuttingRate(value)),
            UnitPowerKilowattsPerCm3PerMinute = Value("unitPowerKwPerCm3PerMin", value => value),
            UnitPowerByHardness = row.TryGetProperty("unitPowerGroup", out var group) ? unitPowers[group.GetString()!] : null,
            BladeLifeSquareMeters = Value("bladeLifeM2", value => value),
            WorkHardening = row.TryGetProperty("workHardening", out var hardens) && hardens.GetBoolean(),
            CautionCodes = row.TryGetProperty("cautionCodes", out var codes) ? Strings(codes) : [],
        };

        Sourced<T> Value<T>(string member, Func<decimal, T> quantity)
        {
            var pair = row.GetProperty(member);
            var (text, confidence) = sources[pair[1].GetString()!];
            return new(quantity(pair[0].GetDecimal()), text, confidence);
        }
    }

    private static IEnumerable<UnitPowerByHardness> UnitPowers(JsonElement tables, Dictionary<string, (string Text, Confidence Confidence)> sources) =>
        tables.GetProperty("groups").EnumerateObject().Select(group => new UnitPowerByHardness(
            group.Name,
            sources[tables.GetProperty("source").GetString()!].Text,
            [.. group.Value.EnumerateArray().Select(band => (band[0].GetDecimal(), band[1].GetDecimal(), band[2].GetDecimal()))]));

    /// <summary>
    /// The same data for another designation. Density, unit power and blade life belong to the kind of metal and stay as trustworthy as they are
    /// where the designations are equivalent; speed and rate were published for the row's own grade.
    /// </summary>
    private static Grade TakenOver(Grade grade, IReadOnlyList<string> names, Confidence confidence)
    {
        var metal = confidence == Confidence.FromMemory ? confidence : (Confidence?)null;
        return grade with
        {
            Designation = names[0],
            Designations = names,
            Density = Weakened(grade.Density, metal),
            ReferenceBladeSpeed = Weakened(grade.ReferenceBladeSpeed, confidence),
            ReferenceCuttingRate = Weakened(grade.ReferenceCuttingRate, confidence),
            UnitPowerKilowattsPerCm3PerMinute = Weakened(grade.UnitPowerKilowattsPerCm3PerMinute, metal),
            BladeLifeSquareMeters = Weakened(grade.BladeLifeSquareMeters, metal),
        };

        Sourced<T> Weakened<T>(Sourced<T> value, Confidence? limit) => limit is { } least
            ? new(value.Value, $"{value.Source}; of {grade.Designation}", least > value.Confidence ? least : value.Confidence)
            : value;
    }

    private static IEnumerable<IReadOnlyList<string>> NameLists(JsonElement row, string member) =>
        row.TryGetProperty(member, out var lists) ? lists.EnumerateArray().Select(Strings) : [];

    private static IReadOnlyList<string> Strings(JsonElement list) => [.. list.EnumerateArray().Select(item => item.GetString()!)];

    private static (string Text, Confidence Confidence) Source(JsonElement source) =>
        (source.GetProperty("source").GetString()!, source.GetProperty("confidence").GetString() switch
        {
            "published" => Confidence.Published,
            "secondary" => Confidence.Secondary,
            "commonPractice" => Confidence.CommonPractice,
            "fromMemory" => Confidence.FromMemory,
            var other => throw new InvalidOperationException($"The confidence {other} is unknown."),
        });
}
