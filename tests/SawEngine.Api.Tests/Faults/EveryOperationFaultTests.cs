using System.IO.Compression;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using SawEngine.Api.Operations;

namespace SawEngine.Api.Tests.Faults;

/// <summary>Bad input to every operation, by what the OpenAPI document allows.</summary>
[Collection(HostCollection.Name)]
public sealed class EveryOperationFaultTests(ServiceHost host)
{
    private const int Megabytes = 1_000_000;

    public static TheoryData<string> Verbs => [.. SawEngineApi.Operations(SawEngineApi.Nester(Microsoft.Extensions.Logging.Abstractions.NullLoggerFactory.Instance)).Select(operation => operation.Verb)];

    [Theory]
    [MemberData(nameof(Verbs))]
    public async Task Every_fault_has_its_status_pointer_and_code(string verb)
    {
        var operation = Find(verb);
        var document = JsonNode.Parse(await host.Client.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative)))!;
        var schema = document["paths"]![operation.Path]!["post"]!["requestBody"]!["content"]!["application/json"]!["schema"]!;
        var spoiled = new SpoiledBodies(document, JsonNode.Parse(operation.Example)!).All(schema).ToList();
        var wrong = new List<string>();
        foreach (var body in spoiled)
        {
            if (await Disagreement(operation.Path, body) is { } words)
                wrong.Add(words);
        }

        Assert.True(spoiled.Count > 100, $"Only {spoiled.Count} bodies.");
        Assert.True(wrong.Count == 0, $"{wrong.Count} of {spoiled.Count} bodies:\n{string.Join('\n', wrong.Take(20))}");
    }

    [Theory]
    [MemberData(nameof(Verbs))]
    public async Task Faults_at_many_places_come_at_once(string verb)
    {
        var operation = Find(verb);
        var example = JsonNode.Parse(operation.Example)!;
        var leaves = JsonPlaces.Of(example).Where(place => JsonPlaces.At(example, place) is JsonValue && !place.Contains("/attributes/", StringComparison.Ordinal)).ToList();
        var body = leaves.Aggregate(example, (root, place) => JsonNode.Parse(JsonPlaces.With(root, place, _ => "{}"))!).ToJsonString();

        var problem = await host.Post(operation.Path, body, 400);

        Assert.Equal(leaves.Count, (int?)problem["errorCount"]);
        Assert.Equal(leaves.Take(100), problem["errors"]!.AsArray().Select(fault => (string?)fault!["pointer"]));
    }

    [Theory]
    [MemberData(nameof(Verbs))]
    public async Task Body_that_is_no_json_of_a_bearable_size_is_refused_by_its_envelope(string verb)
    {
        var operation = Find(verb);
        var example = Encoding.UTF8.GetBytes(operation.Example);

        await Refused(operation.Path, example, 415, content => content.Headers.ContentType = new("text/plain"));
        await Refused(operation.Path, example, 415, content => content.Headers.ContentType = new("application/json") { CharSet = "utf-16" });
        await Refused(operation.Path, example, 415, content => content.Headers.ContentEncoding.Add("br"));
        await Refused(operation.Path, example, 400, content => content.Headers.ContentEncoding.Add("gzip"));
        await Refused(operation.Path, new byte[50 * Megabytes], 413, static _ => { });
        await Refused(operation.Path, Packed(new byte[50 * Megabytes]), 413, content => content.Headers.ContentEncoding.Add("gzip"));
        await Refused(operation.Path, [.. example[..^1], 0xC3], 400, static _ => { });
    }

    private Operation Find(string verb) => host.Services.GetRequiredService<IReadOnlyList<Operation>>().Single(operation => operation.Verb == verb);

    private async Task<string?> Disagreement(string path, SpoiledBody spoiled)
    {
        using var response = await host.Post(path, spoiled.Body);
        var text = await response.Content.ReadAsStringAsync();
        var wanted = $"{spoiled.What} at {spoiled.Pointer}: {spoiled.Status} {spoiled.Code}";
        if ((int)response.StatusCode != spoiled.Status)
            return $"{wanted}, but {(int)response.StatusCode}: {Start(text)}";
        var faults = JsonNode.Parse(text)!["errors"]!.AsArray();
        var sent = Pointers.Read(spoiled.Body);
        var lost = faults.Where(fault => sent is not null && !Pointers.Resolves((string)fault!["pointer"]!, sent)).ToList();
        return lost.Count > 0 ? $"{wanted}, but a pointer leads nowhere: {lost[0]}"
            : faults.Any(fault => (string?)fault!["pointer"] == spoiled.Pointer && (string?)fault["code"] == spoiled.Code) ? null
            : $"{wanted}, but {Start(faults.ToJsonString())}";
    }

    private async Task Refused(string path, byte[] body, int status, Action<ByteArrayContent> change)
    {
        using var content = ServiceHost.Json(body);
        change(content);
        using var response = await host.Client.PostAsync(path, content);

        Assert.Equal(status, (int)response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
    }

    private static byte[] Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest))
            gzip.Write(bytes);
        return packed.ToArray();
    }

    private static string Start(string text) => text.Length > 400 ? text[..400] : text;
}
