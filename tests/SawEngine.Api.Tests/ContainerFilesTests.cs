using System.Text.RegularExpressions;
using SawEngine.Api.Wire;
using SharpYaml.Serialization;

namespace SawEngine.Api.Tests;

/// <summary>What can be held against the files of the container without an engine that builds it.</summary>
public sealed partial class ContainerFilesTests
{
    private static readonly string[] Dockerfile = Repository.Read("docker", "Dockerfile").Split('\n');
    private static readonly YamlNode Service = Compose();

    [Fact]
    public void Everything_that_is_copied_is_there_and_not_ignored()
    {
        var allowed = Repository.Read("docker", "Dockerfile.dockerignore").Split('\n').Where(line => line.StartsWith('!')).Select(line => line[1..]).ToList();
        var sources = Dockerfile.Where(line => line.StartsWith("COPY ", StringComparison.Ordinal) && !line.Contains("--from", StringComparison.Ordinal))
            .SelectMany(line => line.Split(' ')[1..^1]).ToList();

        Assert.NotEmpty(sources);
        foreach (var source in sources)
        {
            Assert.True(Path.Exists(Repository.Find(source)), source);
            Assert.Contains(allowed, path => source == path || source.StartsWith(path + "/", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Every_project_of_the_service_is_restored_locked()
    {
        Assert.Contains(Dockerfile, line => line == "RUN dotnet restore src/SawEngine.Api --locked-mode");
        foreach (var project in Directory.GetDirectories(Repository.Find("src")).Select(Path.GetFileName))
            Assert.Contains(Dockerfile, line => line.StartsWith($"COPY src/{project}/{project}.csproj src/{project}/packages.lock.json ", StringComparison.Ordinal));
    }

    [Fact]
    public void Image_runs_without_root_or_shell()
    {
        Assert.Contains("USER 1654", Dockerfile);
        Assert.Contains("ENTRYPOINT [\"dotnet\", \"/app/SawEngine.Api.dll\"]", Dockerfile);
        Assert.EndsWith("-chiseled", Dockerfile.Last(line => line.StartsWith("FROM ", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void Container_may_do_nothing_that_it_need_not()
    {
        Assert.Equal("true", Text(At(Service, "read_only")));
        Assert.Equal("ALL", Text(Assert.Single((YamlSequenceNode)At(Service, "cap_drop"))));
        Assert.Equal("no-new-privileges:true", Text(Assert.Single((YamlSequenceNode)At(Service, "security_opt"))));
        Assert.StartsWith("/tmp", Text(Assert.Single((YamlSequenceNode)At(Service, "tmpfs"))), StringComparison.Ordinal);
        Assert.StartsWith("127.0.0.1:", Text(Assert.Single((YamlSequenceNode)At(Service, "ports"))), StringComparison.Ordinal);
        Assert.NotEmpty(Text(At(Service, "mem_limit")));
    }

    [Fact]
    public void Container_is_given_the_time_to_end_its_calculations()
    {
        var grace = int.Parse(Seconds().Match(Text(At(Service, "stop_grace_period"))).Value, System.Globalization.CultureInfo.InvariantCulture);

        Assert.True(grace > Limits.WaitSeconds + Limits.Seconds + 2 * Limits.GraceSeconds);
    }

    [Fact]
    public void Both_files_probe_alike()
    {
        var test = string.Join(' ', ((YamlSequenceNode)At(At(Service, "healthcheck"), "test")).Select(Text));

        Assert.Equal("CMD dotnet /app/SawEngine.Api.dll health http://127.0.0.1:8080/health/ready", test);
        Assert.Contains(Dockerfile, line => line.Trim() == "CMD [\"dotnet\", \"/app/SawEngine.Api.dll\", \"health\", \"http://127.0.0.1:8080/health/ready\"]");
    }

    private static YamlNode Compose()
    {
        var yaml = new YamlStream();
        yaml.Load(new StringReader(Repository.Read("docker", "compose.yaml")));
        return At(At(yaml.Documents[0].RootNode, "services"), "sawengine");
    }

    private static YamlNode At(YamlNode node, string key) => ((YamlMappingNode)node).Children[new YamlScalarNode(key)];

    private static string Text(YamlNode node) => ((YamlScalarNode)node).Value!;

    [GeneratedRegex("^[0-9]+(?=s$)")]
    private static partial Regex Seconds();
}
