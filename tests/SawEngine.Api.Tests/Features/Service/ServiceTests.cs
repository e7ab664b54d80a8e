using System.Reflection;
using System.Text.Json.Nodes;
using SawEngine.Api.Features.Service;
using SawEngine.Api.Wire;
using SawEngine.Core.Grades;
using SawEngine.Core.Sections;

namespace SawEngine.Api.Tests.Features.Service;

[Collection(HostCollection.Name)]
public sealed class ServiceTests(ServiceHost host)
{
    [Fact]
    public async Task Service_names_versions_operations_and_limits()
    {
        var service = JsonNode.Parse(await host.Client.GetStringAsync(new Uri("/v1/service", UriKind.Relative)))!;

        Assert.Equal("0.1.0", (string?)service["engineVersion"]);
        Assert.Equal("1.0", (string?)service["schemaVersion"]);
        Assert.Contains(service["operations"]!.AsArray(), o => (string?)o!["path"] == "/v1/nests" && (string?)o["operationId"] == "calculateNest");
        Assert.Contains(service["solvers"]!.AsArray(), s => (string?)s!["name"] == "SawEngine.Solvers");
        Assert.Equal(Limits.Lines, (int?)service["limits"]!["lines"]);
        Assert.All(service["limits"]!.AsObject(), limit => Assert.True((int)limit.Value! > 0));
    }

    /// <summary>Limits that bound no request, but how answers are written.</summary>
    private static readonly string[] NotPublished =
    [
        nameof(Limits.Amount), nameof(Limits.GraceSeconds), nameof(Limits.RateGraceSeconds), nameof(Limits.RetryAfterLeastSeconds), nameof(Limits.RetryAfterMostSeconds),
    ];

    [Fact]
    public void Every_limit_is_published()
    {
        var published = typeof(LimitsJson).GetProperties().Where(member => member.PropertyType == typeof(int)).ToDictionary(m => m.Name, m => (int)m.GetValue(LimitsJson.InForce)!);

        foreach (var (name, value) in Members(typeof(Limits)).Where(limit => !NotPublished.Contains(limit.Name)))
            Assert.Equal((name, value), (name, (object)published[name]));
        foreach (var (prefix, limits) in new[] { ("Plan", typeof(PlanLimits)), ("Schedule", typeof(ScheduleLimits)), ("Estimate", typeof(EstimateLimits)), ("", typeof(CuttingDataLimits)) })
        {
            foreach (var (name, value) in Members(limits))
                Assert.Equal((name, value), (name, (object)published[prefix + name]));
        }
    }

    private static IEnumerable<(string Name, object? Value)> Members(Type type) =>
        type.GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => (field.Name, field.GetValue(null)))
            .Concat(type.GetProperties(BindingFlags.Public | BindingFlags.Static).Select(property => (property.Name, property.GetValue(null))));

    [Fact]
    public void Data_version_is_that_of_the_catalogs()
    {
        Assert.Equal(Versions.Data, SectionCatalog.Standard.DataVersion);
        Assert.Equal(Versions.Data, GradeCatalog.Standard.DataVersion);
    }

    [Theory]
    [InlineData("/health/live")]
    [InlineData("/health/ready")]
    public async Task Probes_answer_healthy(string path) => Assert.Equal("Healthy", await host.Client.GetStringAsync(new Uri(path, UriKind.Relative)));
}
