using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using SawEngine.Api.Operations;
using SawEngine.Api.Tests.Http;
using Xunit.Abstractions;

namespace SawEngine.Api.Tests.Faults;

/// <summary>Mutated and hostile bodies over the real server. <c>SAWENGINE_HOSTILE_BODIES</c> sets their number, <c>SAWENGINE_SEED</c> their seed.</summary>
public sealed class HostileBodyTests(KestrelServer server, ITestOutputHelper output) : IClassFixture<KestrelServer>
{
    private const int UsualNumber = 1000;

    private readonly SortedDictionary<string, int> _answers = new(StringComparer.Ordinal);

    [Fact]
    public async Task Hostile_bodies_are_answered_or_refused_with_pointers_that_resolve()
    {
        var (number, seed) = (Setting("SAWENGINE_HOSTILE_BODIES", UsualNumber), Setting("SAWENGINE_SEED", 1));
        var operations = server.Services.GetRequiredService<IReadOnlyList<Operation>>();
        using var client = new HttpClient { BaseAddress = server.Address };
        var makers = operations.Select((operation, i) =>
            new HostileBodies(operation.Example, [.. operations.Where(other => other != operation).Select(other => other.Example)], (ulong)(seed + i))).ToList();
        var wrong = new List<string>();
        for (var i = 0; i < number; i++)
        {
            if (await Fault(client, operations[i % operations.Count].Path, makers[i % makers.Count].Next()) is { } words)
                wrong.Add(words);
        }

        output.WriteLine($"{number} bodies, seed {seed}: {string.Join(", ", _answers.Select(answer => $"{answer.Key} {answer.Value}"))}");
        Assert.True(wrong.Count == 0, $"{wrong.Count} of {number}:\n{string.Join('\n', wrong.Take(10))}");
        Assert.True(_answers.ContainsKey("200") && _answers.ContainsKey("400") && _answers.ContainsKey("422") && _answers.ContainsKey("415"), "The bodies are too much alike.");
        Assert.Equal("Healthy", await client.GetStringAsync(new Uri("/health/ready", UriKind.Relative)));
    }

    /// <summary>What is wrong with the answer to a body; null where nothing is.</summary>
    private async Task<string?> Fault(HttpClient client, string path, HostileBody body)
    {
        using var content = new ByteArrayContent(body.Sent);
        if (body.ContentType is not null)
            content.Headers.TryAddWithoutValidation("Content-Type", body.ContentType);
        if (body.ContentEncoding is not null)
            content.Headers.TryAddWithoutValidation("Content-Encoding", body.ContentEncoding);
        using var response = await client.PostAsync(path, content);
        var status = (int)response.StatusCode;
        var key = status.ToString(CultureInfo.InvariantCulture);
        _answers[key] = _answers.GetValueOrDefault(key) + 1;
        var text = await response.Content.ReadAsStringAsync();
        var complaint = status switch
        {
            200 => text.Contains("not_verified", StringComparison.Ordinal) ? "an answer was withheld" : null,
            400 or 413 or 415 or 422 => OfProblem(response, text, body),
            _ => "an unexpected status",
        };
        return complaint is null ? null : $"{complaint}: {status} by {path} for {Encoding.UTF8.GetString(body.Bytes)}\n    {text}";
    }

    private static string? OfProblem(HttpResponseMessage response, string text, HostileBody body)
    {
        if (response.Content.Headers.ContentType?.MediaType != "application/problem+json")
            return "no problem document";
        var problem = JsonNode.Parse(text)!;
        if ((int?)problem["status"] != (int)response.StatusCode || problem["type"] is null || problem["title"] is null)
            return "an incomplete problem document";
        var pointers = problem["errors"]?.AsArray().Select(fault => (string)fault!["pointer"]!).ToList() ?? [];
        if ((int)response.StatusCode is 400 or 422 && pointers.Count == 0)
            return "no faults";
        var sent = Pointers.Read(WithoutMark(body.Bytes));
        var lost = pointers.FirstOrDefault(pointer => sent is null ? pointer != "#" : !Pointers.Resolves(pointer, sent));
        return lost is null ? null : $"{lost} leads nowhere";
    }

    private static ReadOnlyMemory<byte> WithoutMark(byte[] bytes) => bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? bytes.AsMemory(3) : bytes;

    private static int Setting(string name, int usual) => int.TryParse(Environment.GetEnvironmentVariable(name), CultureInfo.InvariantCulture, out var value) ? value : usual;
}
