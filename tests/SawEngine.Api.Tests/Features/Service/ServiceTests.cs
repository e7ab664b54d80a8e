using System.Text.Json.Nodes;
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
