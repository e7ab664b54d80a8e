using System.IO.Compression;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Http;

[Collection(HostCollection.Name)]
public sealed class HttpTests(ServiceHost host)
{
    private IReadOnlyList<Operation> Operations => host.Services.GetRequiredService<IReadOnlyList<Operation>>();

    private Operation AnyOperation => Operations[0];

    [Fact]
    public async Task Example_of_every_operation_is_answered()
    {
        foreach (var operation in Operations)
        {
            var answer = await host.Post(operation.Path, operation.Example, 200);
            Assert.Equal(Versions.Schema, (string?)answer["schemaVersion"]);
            Assert.Equal(Versions.Engine, (string?)answer["engineVersion"]);
            Assert.Equal(Versions.Data, (string?)answer["dataVersion"]);
            Assert.Matches("^sha-256:[0-9a-f]{64}$", (string?)answer["requestDigest"]);
        }
    }

    [Fact]
    public async Task Unknown_path_is_404_with_a_problem_document()
    {
        using var response = await host.Client.GetAsync(new Uri("/v1/nothing", UriKind.Relative));

        await AssertProblem(response, 404, "urn:sawengine:problem:not-found");
    }

    [Theory]
    [InlineData("/v1/nests", "GET", "POST")]
    [InlineData("/v1/nests", "DELETE", "POST")]
    [InlineData("/v1/service", "POST", "GET, HEAD")]
    public async Task Wrong_method_is_405_with_allow(string path, string method, string allow)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), path);
        using var response = await host.Client.SendAsync(request);

        await AssertProblem(response, 405, "urn:sawengine:problem:method-not-allowed");
        Assert.Equal(allow, string.Join(", ", response.Content.Headers.Allow.Order()));
    }

    [Theory]
    [InlineData("application/xml")]
    [InlineData("application/vnd.x+json")]
    [InlineData("text/json")]
    [InlineData("application/json; charset=iso-8859-1")]
    [InlineData("application/json; charset=utf-16")]
    [InlineData(null)]
    public async Task Other_media_type_or_charset_is_415(string? contentType)
    {
        using var content = new ByteArrayContent(Encoding.UTF8.GetBytes(AnyOperation.Example));
        content.Headers.ContentType = contentType is null ? null : MediaTypeHeaderValue.Parse(contentType);
        using var response = await host.Client.PostAsync(AnyOperation.Path, content);

        await AssertProblem(response, 415, "urn:sawengine:problem:unsupported-media-type");
    }

    [Theory]
    [InlineData("application/json; charset=utf-8")]
    [InlineData("application/json; charset=\"UTF-8\"")]
    [InlineData("APPLICATION/JSON")]
    public async Task Json_in_utf8_is_read(string contentType)
    {
        using var content = new ByteArrayContent(Encoding.UTF8.GetBytes(AnyOperation.Example));
        content.Headers.TryAddWithoutValidation("Content-Type", contentType);
        using var response = await host.Client.PostAsync(AnyOperation.Path, content);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    [Fact]
    public async Task Packed_body_is_read()
    {
        using var response = await PostEncoded(Gzip(Encoding.UTF8.GetBytes(AnyOperation.Example)), "gzip");

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    [Theory]
    [InlineData("zstd")]
    [InlineData("gzip, gzip")]
    [InlineData("br")]
    public async Task Other_content_encoding_is_415(string encoding)
    {
        using var response = await PostEncoded(Encoding.UTF8.GetBytes(AnyOperation.Example), encoding);

        await AssertProblem(response, 415, "urn:sawengine:problem:unsupported-media-type");
    }

    [Fact]
    public async Task Body_that_only_claims_to_be_packed_is_400()
    {
        using var response = await PostEncoded(Encoding.UTF8.GetBytes(AnyOperation.Example), "gzip");

        var problem = await AssertProblem(response, 400, "urn:sawengine:problem:invalid-shape");
        Assert.Equal(FaultCode.InvalidGzip, (string?)problem["errors"]![0]!["code"]);
    }

    [Fact]
    public async Task Small_packed_body_that_unpacks_to_too_much_is_413()
    {
        using var response = await PostEncoded(Gzip(new byte[50_000_000]), "gzip");

        await AssertProblem(response, 413, "urn:sawengine:problem:too-large");
    }

    [Fact]
    public async Task Body_over_the_limit_is_413()
    {
        using var response = await host.Client.PostAsync(AnyOperation.Path, ServiceHost.Json(new byte[Limits.BodyBytes + 1]));

        await AssertProblem(response, 413, "urn:sawengine:problem:too-large");
    }

    [Theory]
    [InlineData("/v1/service")]
    [InlineData("/health/live")]
    [InlineData("/health/ready")]
    [InlineData("/openapi/v1.json")]
    [InlineData("/openapi/3.0/v1.json")]
    public async Task Head_is_answered_where_get_is(string path)
    {
        using var get = await host.Client.GetAsync(new Uri(path, UriKind.Relative));
        using var request = new HttpRequestMessage(HttpMethod.Head, path);
        using var head = await host.Client.SendAsync(request);

        Assert.Equal(HttpStatusCode.OK, get.StatusCode);
        Assert.Equal(HttpStatusCode.OK, head.StatusCode);
        Assert.Equal(get.Content.Headers.ContentType, head.Content.Headers.ContentType);
    }

    [Fact]
    public async Task Further_examples_are_answered_and_show_what_they_say()
    {
        var nest = Operations.Single(operation => operation.Verb == "nest");
        var answers = new Dictionary<string, JsonNode>();
        foreach (var (name, _, json) in nest.MoreExamples)
        {
            answers.Add(name, await host.Post(nest.Path, json, 200));
            Assert.Empty(answers[name]["unplaced"]!.AsArray());
            Assert.All(answers[name]["warnings"]!.AsArray(), warning => Assert.Equal(("substitutes", "substitute_used"), (name, (string?)warning!["code"])));
        }

        Assert.Contains(answers["inchesWithRemnants"]["claims"]!.AsArray(), claim => (string?)claim!["stockId"] is "RM-17" or "RM-21");
        Assert.Contains(answers["miteredFrame"]["layouts"]!.AsArray(), layout => layout!["cuts"]!.AsArray().Any(cut => cut!["turn"] is not null));
        Assert.Contains(answers["cutBundles"]["layouts"]!.AsArray(), layout => layout!["bundle"] is not null);
        Assert.Equal("#/pieces/0/substitutes/1", (string?)Assert.Single(answers["substitutes"]["warnings"]!.AsArray())!["pointer"]);
        Assert.Equal(["S235JR", "S355J2"], answers["substitutes"]["layouts"]!.AsArray().Select(layout => (string?)layout!["grade"]).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(["shorter", "fewer"], answers["nearMisses"]["nearMisses"]!.AsArray().Select(miss => (string?)miss!["change"]).Order(StringComparer.Ordinal).Reverse());
    }

    [Fact]
    public async Task Member_that_is_ignored_in_many_items_is_one_warning()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/nests")
        {
            Content = ServiceHost.Json(
                """{"pieces":[{"pieceId":"a","length":9,"quantity":1,"mark":1},{"pieceId":"b","length":9,"quantity":1,"mark":1,"note":1}],"stock":[],"cut":{"kerf":1}}"""),
        };
        request.Headers.Add("Prefer", "handling=lenient");
        using var response = await host.Client.SendAsync(request);

        var warnings = JsonNode.Parse(await response.Content.ReadAsStringAsync())!["warnings"]!.AsArray();
        Assert.Equal(["#/pieces/0/mark", "#/pieces/1/note"], warnings.Select(warning => (string?)warning!["pointer"]));
        Assert.EndsWith("It was ignored, here and in 1 places alike.", (string?)warnings[0]!["detail"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lenient_handling_turns_unknown_members_into_warnings()
    {
        var body = JsonNode.Parse(AnyOperation.Example)!.AsObject();
        body["kerff"] = 1;
        using var request = new HttpRequestMessage(HttpMethod.Post, AnyOperation.Path) { Content = ServiceHost.Json(body.ToJsonString()) };
        request.Headers.Add("Prefer", "handling=lenient");
        using var response = await host.Client.SendAsync(request);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal("handling=lenient", Assert.Single(response.Headers.GetValues("Preference-Applied")));
        var answer = JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
        Assert.Contains(answer["warnings"]!.AsArray(), w => (string?)w!["code"] == FaultCode.UnknownMember && (string?)w["pointer"] == "#/kerff");
    }

    [Fact]
    public async Task Wait_is_applied_where_the_request_states_no_time_limit()
    {
        Assert.Equal(["wait=20"], await PreferenceApplied(AnyOperation.Example));

        var limited = JsonNode.Parse(AnyOperation.Example)!.AsObject();
        limited["timeLimitSeconds"] = 30;
        Assert.Empty(await PreferenceApplied(limited.ToJsonString()));
    }

    [Fact]
    public async Task Documentation_page_loads_nothing_from_outside()
    {
        var page = await host.Client.GetStringAsync(new Uri("/docs/index.html", UriKind.Relative));

        Assert.DoesNotContain("//", string.Concat(page.Split('\n').Where(line => line.Contains("src=", StringComparison.Ordinal) || line.Contains("href=", StringComparison.Ordinal))), StringComparison.Ordinal);
    }

    private async Task<IEnumerable<string>> PreferenceApplied(string json)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, AnyOperation.Path) { Content = ServiceHost.Json(json) };
        request.Headers.Add("Prefer", "wait=20");
        using var response = await host.Client.SendAsync(request);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return response.Headers.TryGetValues("Preference-Applied", out var applied) ? applied : [];
    }

    private async Task<HttpResponseMessage> PostEncoded(byte[] bytes, string encoding)
    {
        var content = ServiceHost.Json(bytes);
        content.Headers.TryAddWithoutValidation("Content-Encoding", encoding);
        return await host.Client.PostAsync(AnyOperation.Path, content);
    }

    private static byte[] Gzip(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Optimal))
            gzip.Write(bytes);
        return packed.ToArray();
    }

    private static async Task<JsonObject> AssertProblem(HttpResponseMessage response, int status, string type)
    {
        var body = await response.Content.ReadAsStringAsync();
        Assert.True((int)response.StatusCode == status, $"{(int)response.StatusCode}: {body}");
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        var problem = JsonNode.Parse(body)!.AsObject();
        Assert.Equal(type, (string?)problem["type"]);
        Assert.Equal(status, (int?)problem["status"]);
        Assert.False(string.IsNullOrEmpty((string?)problem["title"]));
        Assert.False(string.IsNullOrEmpty((string?)problem["detail"]));
        Assert.False(string.IsNullOrEmpty((string?)problem["traceId"]));
        return problem;
    }
}
