using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.OpenApi;
using SawEngine.Api.CommandLine;
using SawEngine.Api.Operations;

namespace SawEngine.Api.Tests.OpenApi;

[Collection(HostCollection.Name)]
public sealed class OpenApiDocumentTests(ServiceHost host)
{
    public static TheoryData<string> Paths => ["/openapi/v1.json", "/openapi/3.0/v1.json"];

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Document_parses_without_errors_and_warnings(string path)
    {
        var result = OpenApiDocument.Parse(await Text(path), "json");

        Assert.Empty(result.Diagnostic!.Errors);
        Assert.Empty(result.Diagnostic.Warnings);
    }

    [Theory]
    [InlineData("/openapi/v1.json", "3.1")]
    [InlineData("/openapi/3.0/v1.json", "3.0")]
    public async Task Document_states_its_version(string path, string version) =>
        Assert.StartsWith(version, (string?)(await Json(path))["openapi"], StringComparison.Ordinal);

    /// <summary>After a change of the interface: <c>dotnet run --project src/SawEngine.Api -- openapi openapi</c>.</summary>
    [Fact]
    public async Task Committed_documents_are_those_of_the_code()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var openApi = Commands.All([]).Single(command => command.Verb == "openapi");
            Assert.Equal(0, await openApi.Run(folder.FullName, new(Stream.Null, Stream.Null, TextWriter.Null), CancellationToken.None));
            foreach (var file in new[] { "v1.json", Path.Combine("3.0", "v1.json") })
                Assert.Equal(Repository.Read("openapi", file), await File.ReadAllTextAsync(Path.Combine(folder.FullName, file)));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task Every_operation_has_its_id_its_example_and_problems()
    {
        var document = await Json("/openapi/v1.json");
        foreach (var operation in host.Services.GetRequiredService<IReadOnlyList<Operation>>())
        {
            var post = document["paths"]![operation.Path]!["post"]!;
            Assert.Equal(operation.OperationId, (string?)post["operationId"]);
            var media = post["requestBody"]!["content"]!["application/json"]!;
            Assert.True(JsonNode.DeepEquals(JsonNode.Parse(operation.Example), operation.MoreExamples.Count == 0 ? media["example"] : media["examples"]!["first"]!["value"]));
            Assert.All(operation.MoreExamples, more => Assert.True(JsonNode.DeepEquals(JsonNode.Parse(more.Json), media["examples"]![more.Name]!["value"])));
            Assert.True((bool?)post["requestBody"]!["required"]);
            foreach (var status in new[] { "400", "401", "406", "408", "413", "415", "422", "503" })
                Assert.Equal("#/components/schemas/Problem", (string?)post["responses"]![status]!["content"]!["application/problem+json"]!["schema"]!["$ref"]);
        }
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Every_operation_takes_a_key_and_answers_401_without(string path)
    {
        var document = await Json(path);
        var scheme = document["components"]!["securitySchemes"]!["ApiKey"]!;
        Assert.Equal(("apiKey", "header", "X-Api-Key"), ((string?)scheme["type"], (string?)scheme["in"], (string?)scheme["name"]));
        foreach (var operation in document["paths"]!.AsObject().SelectMany(item => item.Value!.AsObject()).Select(method => method.Value!))
        {
            Assert.Equal("ApiKey", Assert.Single(operation["security"]!.AsArray())!.AsObject().Single().Key);
            Assert.Equal("#/components/schemas/Problem", (string?)operation["responses"]!["401"]!["content"]!["application/problem+json"]!["schema"]!["$ref"]);
        }
    }

    [Fact]
    public async Task Numbers_have_a_format_and_bounds_and_nothing_is_null_or_one_of()
    {
        foreach (var (name, schema) in Schemas(await Json("/openapi/v1.json")))
        {
            Assert.True(schema["oneOf"] is null && schema["anyOf"] is null && schema["type"] is not JsonArray, name);
            if ((string?)schema["type"] is "number" or "integer")
            {
                Assert.True(schema["format"] is not null, $"{name} has no format");
                Assert.True(schema["maximum"] is not null && (schema["minimum"] ?? schema["exclusiveMinimum"]) is not null, $"{name} has no bounds");
            }
        }
    }

    [Fact]
    public async Task Every_member_of_a_component_is_described_and_objects_are_components()
    {
        var components = (await Json("/openapi/v1.json"))["components"]!["schemas"]!.AsObject();
        foreach (var (component, schema) in components)
        {
            Assert.False(string.IsNullOrWhiteSpace((string?)schema!["description"]), component);
            foreach (var (name, member) in schema["properties"]?.AsObject() ?? [])
            {
                Assert.False(string.IsNullOrWhiteSpace((string?)member!["description"]), $"{component}.{name}");
                Assert.True(member["properties"] is null, $"{component}.{name} is an object without a name");
            }
        }
    }

    [Fact]
    public async Task Answers_are_open_and_have_no_closed_enums_while_requests_are_closed()
    {
        var document = await Json("/openapi/v1.json");
        var components = document["components"]!["schemas"]!.AsObject();

        Assert.All(Reached(document, post => post["responses"]!), name =>
        {
            Assert.True(components[name]!["additionalProperties"] is not JsonValue, $"{name} is closed");
            Assert.True(components[name]!["enum"] is null, $"{name} is a closed enum");
        });
        Assert.All(
            host.Services.GetRequiredService<IReadOnlyList<Operation>>(),
            operation => Assert.False((bool?)components[operation.RequestType.Name]!["additionalProperties"]));
    }

    private static HashSet<string> Reached(JsonObject document, Func<JsonNode, JsonNode> from)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<JsonNode>(document["paths"]!.AsObject().SelectMany(path => path.Value!.AsObject()).Select(method => from(method.Value!)));
        while (open.TryPop(out var node))
        {
            foreach (var name in References(node).Where(reached.Add))
                open.Push(document["components"]!["schemas"]![name]!);
        }
        return reached;
    }

    private static IEnumerable<string> References(JsonNode? node) => node switch
    {
        JsonObject o => o.SelectMany(member => member.Key == "$ref" ? [((string)member.Value!).Split('/')[^1]] : References(member.Value)),
        JsonArray a => a.SelectMany(References),
        _ => [],
    };

    private static IEnumerable<(string Name, JsonObject Schema)> Schemas(JsonObject document) =>
        document["components"]!["schemas"]!.AsObject().SelectMany(component => Schemas(component.Key, component.Value!.AsObject()));

    private static IEnumerable<(string Name, JsonObject Schema)> Schemas(string name, JsonObject schema) =>
        (schema["properties"]?.AsObject() ?? [])
            .SelectMany(member => Schemas($"{name}.{member.Key}", member.Value!.AsObject()))
            .Concat(schema["items"] is JsonObject items ? Schemas(name + "[]", items) : [])
            .Prepend((name, schema));

    private Task<string> Text(string path) => host.Client.GetStringAsync(new Uri(path, UriKind.Relative));

    private async Task<JsonObject> Json(string path) => JsonNode.Parse(await Text(path))!.AsObject();
}
