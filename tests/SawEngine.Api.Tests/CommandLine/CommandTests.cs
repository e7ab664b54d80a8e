using System.Text;
using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using SawEngine.Api.CommandLine;
using SawEngine.Api.Operations;

namespace SawEngine.Api.Tests.CommandLine;

[Collection(HostCollection.Name)]
public sealed class CommandTests(ServiceHost host)
{
    private IReadOnlyList<Operation> Operations => host.Services.GetRequiredService<IReadOnlyList<Operation>>();

    [Fact]
    public void Every_operation_has_a_verb_of_its_own()
    {
        var verbs = Commands.All(Operations).Select(command => command.Verb).ToList();

        Assert.Equal(verbs.Count, verbs.Distinct(StringComparer.Ordinal).Count());
        Assert.All(Operations, operation => Assert.Contains(operation.Verb, verbs));
    }

    [Fact]
    public async Task Command_line_and_http_give_the_same_bytes_outside_timing()
    {
        foreach (var operation in Operations)
        {
            using var response = await host.Post(operation.Path, operation.Example);
            var (code, output, _) = await Run(operation.Verb, operation.Example);

            Assert.Equal(0, code);
            Assert.Equal(Answers.WithoutTiming(await response.Content.ReadAsStringAsync()), Answers.WithoutTiming(output));
        }
    }

    [Fact]
    public async Task Nothing_planned_is_exit_code_1()
    {
        var (code, output, _) = await Run("nest", """{"pieces":[{"pieceId":"p","length":7000,"quantity":1}],"stock":[],"cut":{"kerf":1}}""");

        Assert.Equal(1, code);
        Assert.Equal("infeasible", (string?)JsonNode.Parse(output)!["status"]);
    }

    [Fact]
    public async Task Bad_input_is_exit_code_2_with_the_problem_document()
    {
        var (code, output, _) = await Run("nest", "{");

        Assert.Equal(2, code);
        Assert.Equal("urn:sawengine:problem:invalid-shape", (string?)JsonNode.Parse(output)!["type"]);
    }

    [Fact]
    public async Task Missing_file_is_exit_code_2_with_words_on_standard_error()
    {
        using var error = new StringWriter();
        var nest = Commands.Find(["nest", "no-such-file.json"], Commands.All(Operations))!;
        var code = await Commands.Run(nest, ["nest", "no-such-file.json"], new(Stream.Null, Stream.Null, error), CancellationToken.None);

        Assert.Equal(2, code);
        Assert.Contains("no-such-file.json", error.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nest")]
    [InlineData("nest", "a", "b")]
    public async Task Wrong_number_of_arguments_is_exit_code_2_with_the_usage(params string[] arguments)
    {
        using var error = new StringWriter();
        var command = Commands.Find(arguments, Commands.All(Operations))!;

        Assert.Equal(2, await Commands.Run(command, arguments, new(Stream.Null, Stream.Null, error), CancellationToken.None));
        Assert.Equal("Usage: nest FILE", error.ToString().Trim());
    }

    [Theory]
    [InlineData]
    [InlineData("--urls", "http://localhost:1")]
    public void No_arguments_and_settings_start_the_server(params string[] arguments) => Assert.True(Commands.StartsServer(arguments));

    [Theory]
    [InlineData("serve", 2)]
    [InlineData("nests", 2)]
    [InlineData("-x", 2)]
    [InlineData("--help", 0)]
    [InlineData("-h", 0)]
    public async Task Unknown_words_and_help_give_the_usage_and_start_nothing(string word, int exit)
    {
        using var output = new MemoryStream();
        using var error = new StringWriter();

        Assert.False(Commands.StartsServer([word]));
        Assert.Equal(exit, await Commands.Run([word], Commands.All(Operations), new(Stream.Null, output, error), CancellationToken.None));
        var usage = Encoding.UTF8.GetString(output.ToArray()) + error;
        Assert.Equal(exit == 0, error.ToString().Length == 0);
        Assert.All(Commands.All(Operations), command => Assert.Contains($"  {command.Verb} {command.Argument}\n", usage, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "/health/live")]
    [InlineData("/", "/health/live")]
    [InlineData("/health/ready", "/health/ready")]
    public async Task Health_asks_whether_the_service_lives_where_no_path_is_given(string path, string asked)
    {
        using var listener = new System.Net.Sockets.TcpListener(System.Net.IPAddress.Loopback, 0);
        listener.Start();
        var health = Commands.Find(["health"], Commands.All(Operations))!;
        var probe = health.Run($"http://{listener.LocalEndpoint}{path}", new(Stream.Null, Stream.Null, TextWriter.Null), CancellationToken.None);
        using var client = await listener.AcceptTcpClientAsync();
        using var reader = new StreamReader(client.GetStream());
        var line = await reader.ReadLineAsync();
        await client.GetStream().WriteAsync("HTTP/1.1 200 OK\r\nContent-Length: 0\r\n\r\n"u8.ToArray());

        Assert.Equal($"GET {asked} HTTP/1.1", line);
        Assert.Equal(0, await probe);
    }

    private async Task<(int Code, string Output, string Error)> Run(string verb, string input)
    {
        using var standardInput = new MemoryStream(Encoding.UTF8.GetBytes(input));
        using var output = new MemoryStream();
        using var error = new StringWriter();
        var command = Commands.Find([verb], Commands.All(Operations))!;
        var code = await Commands.Run(command, [verb, "-"], new(standardInput, output, error), CancellationToken.None);
        return (code, Encoding.UTF8.GetString(output.ToArray()), error.ToString());
    }
}
