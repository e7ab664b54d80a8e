using SawEngine.Api.CommandLine;
using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.CuttingData;
using SawEngine.Core.Grades;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;

namespace SawEngine.Api.Tests.CommandLine;

public sealed class DefaultsDocumentTests
{
    [Fact]
    public void Committed_table_of_defaults_is_that_of_the_data() =>
        Assert.True(
            Repository.Read("docs", "defaults.md").ReplaceLineEndings("\n") == DefaultsDocument.Text(),
            "Write it again: dotnet run -c Release --project src/SawEngine.Api -- defaults docs/defaults.md");

    [Fact]
    public void Every_default_stands_in_the_table_with_source_and_confidence()
    {
        var text = DefaultsDocument.Text();
        var size = Length.FromMillimeters(400m);
        DefaultValue[] values = [.. CuttingParameters.Default.Values, .. SawDefaults.For(new(size, size, size)).Values, .. FixedValues.Items];
        Assert.All(values, value =>
        {
            Assert.NotEmpty(value.Source);
            Assert.Contains(text.Split('\n'), line => line.StartsWith($"| {value.Name}", StringComparison.Ordinal) && line.EndsWith($"| {value.Source} | {WireEnum.Text(value.Confidence)} |", StringComparison.Ordinal));
        });
        Assert.All(GradeCatalog.Standard.Items, grade => Assert.Contains($"\n| {grade.Designation} | ", text, StringComparison.Ordinal));
        Assert.All(DefaultBlades.Items, item => Assert.Contains($"\n| {item.Blade.BladeId} | ", text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Verb_writes_the_table()
    {
        var file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        try
        {
            Assert.Equal(Commands.Done, await DefaultsDocument.Write(file, new(Stream.Null, Stream.Null, TextWriter.Null), CancellationToken.None));
            Assert.Equal(DefaultsDocument.Text(), await File.ReadAllTextAsync(file));
        }
        finally
        {
            File.Delete(file);
        }
        Assert.Equal(Commands.BadInput, await DefaultsDocument.Write(Path.GetTempPath(), new(Stream.Null, Stream.Null, TextWriter.Null), CancellationToken.None));
    }
}
