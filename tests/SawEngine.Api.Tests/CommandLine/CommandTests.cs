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
    [InlineData("serve")]
    public void Arguments_without_a_verb_start_the_server(params string[] arguments) => Assert.Null(Commands.Find(arguments, Commands.All(Operations)));

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
