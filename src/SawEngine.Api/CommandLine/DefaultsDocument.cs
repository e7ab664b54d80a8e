using System.Globalization;
using System.Text;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.CuttingData;
using SawEngine.Core.Grades;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;

namespace SawEngine.Api.CommandLine;

/// <summary>Saves the table of every value that the engine brings along, with its source and confidence, made from the data themselves.</summary>
internal static class DefaultsDocument
{
    private const string ValueColumns = "| value of | value | unit | source | confidence |\n| --- | --- | --- | --- | --- |\n";
    private const string OfGrade = "; of ";

    /// <summary>Largest capacities in mm, one for each size of saw that defaults tell apart.</summary>
    private static readonly decimal[] Capacities = [200m, 300m, 450m, 650m, 1000m];

    public static async Task<int> Write(string file, CommandIo io, CancellationToken cancellation)
    {
        try
        {
            await File.WriteAllTextAsync(file, Text(), cancellation);
            return Commands.Done;
        }
        catch (Exception unwritable) when (unwritable is IOException or UnauthorizedAccessException)
        {
            await io.Error.WriteLineAsync($"{file} cannot be written: {unwritable.Message}");
            return Commands.BadInput;
        }
    }

    /// <summary>The document.</summary>
    public static string Text()
    {
        var text = new StringBuilder();
        text.Append("""
            # Every default, with source and confidence

            Generated from the data by the verb `defaults`; do not edit. What the confidences mean stands in [sources.md](sources.md). What a request states takes the place of
            the value here, and an answer says which of them it used.

            ## Cutting


            """);
        Append(text, CuttingParameters.Default.Values);
        text.Append("\n## Saws\n\nOf a saw that states only id, capacity, tail and calendar.\n\n");
        AppendSaws(text);
        text.Append("\n## Shop\n\nWhat is not stated counts as nothing: no default is invented for what only the shop knows. An operator attends as many saws as is usual. A change of the angle takes `times.swivelSeconds` where\n`times.angleSetUpSeconds` is not stated.\n\n");
        Append(text, ShopValues());
        text.Append("\n## Fixed\n\nNo request states these.\n\n");
        Append(text, FixedValues.Items);
        AppendBlades(text);
        AppendUnitPowers(text);
        AppendGrades(text);
        return text.ToString().ReplaceLineEndings("\n");
    }

    private static void Append(StringBuilder text, IEnumerable<DefaultValue> values)
    {
        text.Append(ValueColumns);
        foreach (var value in values)
            text.Append(CultureInfo.InvariantCulture, $"| {value.Name} | {Number(value.Value)} | {value.Unit} | {value.Source} | {WireEnum.Text(value.Confidence)} |\n");
    }

    /// <summary>A value that depends on the saw's size has a row for each size.</summary>
    private static void AppendSaws(StringBuilder text)
    {
        var bySize = Capacities.Select(capacity => (Capacity: capacity, SawDefaults.For(Square(capacity)).Values)).ToList();
        Append(text, Enumerable.Range(0, bySize[0].Values.Count).SelectMany(i => bySize.Select(size => size.Values[i].Value).Distinct().Count() == 1
            ? [bySize[0].Values[i]]
            : bySize.Select(size => size.Values[i] with { Name = $"{size.Values[i].Name}, capacity {Number(size.Capacity)} mm" })));
    }

    private static SawCapacity Square(decimal millimeters) => new(Length.FromMillimeters(millimeters), Length.FromMillimeters(millimeters), Length.FromMillimeters(millimeters));

    private static IEnumerable<DefaultValue> ShopValues()
    {
        var (trim, rates) = (new TrimJson(), new RatesJson());
        return
        [
            Unstated("trim.sheared", trim.Sheared, "mm"), Unstated("trim.flameCut", trim.FlameCut, "mm"), Unstated("trim.rolled", trim.Rolled, "mm"),
            Unstated("rates.laborCostPerHour", rates.LaborCostPerHour, "currency/h"), Unstated("rates.handlingCostPerBar", rates.HandlingCostPerBar, "currency"),
            Unstated("rates.scrapValuePerKg", rates.ScrapValuePerKg, "currency/kg"),
            Unstated("walkingSeconds", new ShopJson { Saws = [], Calendars = [] }.WalkingSeconds, "s"),
            new("operators.mostSaws", SawDefaults.SawsOfOperator, "saws", "common practice, no source", Confidence.CommonPractice),
            new("remnants kept where no rule for remnants is stated", 0m, "", "what is not stated is not kept", Confidence.Computed),
        ];
    }

    private static DefaultValue Unstated(string name, decimal value, string unit) => new(name, value, unit, "not stated", Confidence.Computed);

    private static void AppendBlades(StringBuilder text)
    {
        text.Append(CultureInfo.InvariantCulture, $"\n## Blades\n\nOf a saw that lists none. All: {DefaultBlades.Source} (`fromMemory`).\n\n");
        text.Append("| blade | width mm | thickness mm | kerf mm | teeth per inch | up to capacity mm |\n| --- | --- | --- | --- | --- | --- |\n");
        foreach (var (blade, upTo) in DefaultBlades.Items.Select(item => (item.Blade, item.UpToCapacity)))
        {
            text.Append(CultureInfo.InvariantCulture, $"| {blade.BladeId} | {Number(blade.Width.Millimeters)} | {Number(blade.Thickness.Millimeters)} | {Number(blade.Kerf.Millimeters)} ");
            text.Append(CultureInfo.InvariantCulture, $"| {Number(blade.CoarsestTeethPerInch)}/{Number(blade.FinestTeethPerInch)} | {(upTo is { } capacity ? Number(capacity.Millimeters) : "")} |\n");
        }
    }

    private static void AppendUnitPowers(StringBuilder text)
    {
        text.Append(CultureInfo.InvariantCulture, $"\n## Unit power by hardness\n\nIn kW per cm3/min, for a grade of a request that states its hardness; between the hardnesses in straight lines. {GradeCatalog.Standard.UnitPowers[0].Source} (`published`).\n\n");
        var hardnesses = GradeCatalog.Standard.UnitPowers.SelectMany(table => table.Hardnesses).Distinct().Order().ToList();
        text.Append(CultureInfo.InvariantCulture, $"| group | {string.Join(" | ", hardnesses.Select(hardness => Number(hardness) + " HB"))} |\n|{string.Concat(Enumerable.Repeat(" --- |", hardnesses.Count + 1))}\n");
        foreach (var table in GradeCatalog.Standard.UnitPowers)
            text.Append(CultureInfo.InvariantCulture, $"| {table.Group} | {string.Join(" | ", hardnesses.Select(hardness => table.Hardnesses.Contains(hardness) ? Number(table.At(hardness)) : ""))} |\n");
    }

    /// <summary>Each value with the number of its source, which are listed below; what is taken over from another grade names that one.</summary>
    private static void AppendGrades(StringBuilder text)
    {
        var sources = new List<(string Source, Confidence Confidence)>();
        text.Append("\n## Grades\n\nThe number behind a value is that of its source, listed below.\n\n");
        text.Append("| grade | values of | density kg/m3 | blade speed m/min | cutting rate cm2/min | unit power kW per cm3/min | blade life m2 |\n| --- | --- | --- | --- | --- | --- | --- |\n");
        foreach (var grade in GradeCatalog.Standard.Items)
        {
            var like = grade.ReferenceBladeSpeed.Source.Split(OfGrade) is [_, var other] ? other : "";
            text.Append(CultureInfo.InvariantCulture, $"| {grade.Designation} | {like} | {Cell(grade.Density, value => value.KilogramsPerCubicMeter)} | {Cell(grade.ReferenceBladeSpeed, value => value.MetersPerMinute)} ");
            text.Append(CultureInfo.InvariantCulture, $"| {Cell(grade.ReferenceCuttingRate, value => value.SquareCentimetersPerMinute)} | {Cell(grade.UnitPowerKilowattsPerCm3PerMinute, value => value)} | {Cell(grade.BladeLifeSquareMeters, value => value)} |\n");
        }
        text.Append("\n| | source | confidence |\n| --- | --- | --- |\n");
        for (var i = 0; i < sources.Count; i++)
            text.Append(CultureInfo.InvariantCulture, $"| {i + 1} | {sources[i].Source} | {WireEnum.Text(sources[i].Confidence)} |\n");

        string Cell<T>(Sourced<T> value, Func<T, decimal> number)
        {
            var source = (value.Source.Split(OfGrade)[0], value.Confidence);
            if (!sources.Contains(source))
                sources.Add(source);
            return $"{Number(number(value.Value))} ({sources.IndexOf(source) + 1})";
        }
    }

    private static string Number(decimal value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
