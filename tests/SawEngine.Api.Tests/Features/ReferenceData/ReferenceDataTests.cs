using System.Net;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace SawEngine.Api.Tests.Features.ReferenceData;

[Collection(HostCollection.Name)]
public sealed class ReferenceDataTests(ServiceHost host)
{
    private static readonly string[] ListPaths = ["/v1/grades", "/v1/sections", "/v1/blades"];

    private static readonly string[] AnsweredPaths =
        ["/v1/grades", "/v1/grades/304", "/v1/sections?lengthUnit=in", "/v1/sections/HSS4X4X1/4", "/v1/sections/Round%2037", "/v1/blades?toothMaterial=bimetal"];

    public static TheoryData<string> Lists => [.. ListPaths];

    public static TheoryData<string> Answered => [.. AnsweredPaths];

    [Theory]
    [MemberData(nameof(Lists))]
    public async Task Every_designation_of_a_list_is_found_by_path_and_by_query(string list)
    {
        foreach (var item in (await Json(list))["items"]!.AsArray())
        {
            var designation = (string)item!["designation"]!;
            var byPath = await Json($"{list}/{Uri.EscapeDataString(designation)}");
            var byQuery = await Json($"{list}?designation={Uri.EscapeDataString(designation)}");
            Assert.True(JsonNode.DeepEquals(item, byPath["item"]), designation);
            Assert.True(JsonNode.DeepEquals(item, Assert.Single(byQuery["items"]!.AsArray())), designation);
        }
    }

    [Theory]
    [InlineData("/v1/grades")]
    [InlineData("/v1/sections")]
    public async Task Every_other_designation_is_found_too(string list)
    {
        foreach (var item in (await Json(list))["items"]!.AsArray())
        {
            foreach (var other in item!["otherDesignations"]!.AsArray())
            {
                var found = (await Json($"{list}/{Uri.EscapeDataString((string)other!)}"))["item"]!;
                Assert.Contains((string)other!, Designations(found));
                if (found["alternatives"] is null && !JsonNode.DeepEquals(item, found))
                    Assert.Equal((string)other!, (string?)found["designation"]);
            }
        }
    }

    /// <summary>4 x 4 x 1/4 in: the designation states its size (ASTM A500); AISC prints 12.21 lb/ft for it (AISC Shapes Database v15.0).</summary>
    [Theory]
    [InlineData("/v1/sections/HSS4X4X1/4")]
    [InlineData("/v1/sections/HSS4X4X1%2F4")]
    [InlineData("/v1/sections/hss4x4x1%2f4")]
    public async Task Designation_with_a_slash_is_the_rest_of_the_path(string path)
    {
        var answer = await Json(path + "?lengthUnit=in");

        var section = answer["item"]!;
        Assert.Equal("in", (string?)answer["lengthUnit"]);
        Assert.Equal("HSS4X4X1/4", (string?)section["designation"]);
        Assert.Equal((4m, 0.25m), ((decimal)section["dimensions"]!["width"]!, (decimal)section["dimensions"]!["wall"]!));
        Assert.Equal("12.21 lb/ft", (string?)section["publishedMass"]);
        Assert.Equal(101.6m, (decimal)(await Json(path))["item"]!["dimensions"]!["width"]!);
    }

    /// <summary>EN 10365: an IPE 200 is 200 mm high, 100 mm wide and has 2848 mm2.</summary>
    [Fact]
    public async Task Section_has_its_dimensions_and_area_with_their_sources()
    {
        var section = (await Json("/v1/sections/ipe%20200"))["item"]!;

        Assert.Equal((200m, 100m), ((decimal)section["dimensions"]!["height"]!, (decimal)section["dimensions"]!["width"]!));
        Assert.InRange((decimal)section["areaMm2"]!["value"]!, 2848m * 0.999m, 2848m * 1.001m);
        Assert.Equal("computed", (string?)section["areaMm2"]!["confidence"]);
        Assert.False(string.IsNullOrEmpty((string?)section["dimensions"]!["source"]));
    }

    [Fact]
    public async Task Size_that_is_not_listed_is_found_by_a_designation_that_says_it()
    {
        var section = (await Json("/v1/sections/Round%2037"))["item"]!;

        Assert.Equal(37m, (decimal)section["dimensions"]!["diameter"]!);
        Assert.Equal(Math.PI * 37 * 37 / 4, (double)section["areaMm2"]!["value"]!, 0.001);
    }

    /// <summary>Machinery's Handbook, 31st ed., p. 1245: 304 at 120 ft/min, which is 36.6 m/min.</summary>
    [Fact]
    public async Task Values_of_a_grade_have_sources_and_confidence()
    {
        var grade = (await Json("/v1/grades/304"))["item"]!;

        Assert.Equal(36.6m, (decimal)grade["bladeSpeedMPerMin"]!["value"]!);
        Assert.Contains("p. 1245", (string?)grade["bladeSpeedMPerMin"]!["source"], StringComparison.Ordinal);
        foreach (var name in new[] { "densityKgPerM3", "bladeSpeedMPerMin", "cuttingRateCm2PerMin", "unitPowerKwPerCm3PerMin", "bladeLifeM2" })
        {
            Assert.True((decimal)grade[name]!["value"]! > 0, name);
            Assert.False(string.IsNullOrEmpty((string?)grade[name]!["source"]) || string.IsNullOrEmpty((string?)grade[name]!["confidence"]), name);
        }
    }

    [Fact]
    public async Task Ambiguous_designation_gives_the_hardest_and_names_the_others()
    {
        var grade = (await Json("/v1/grades/4140"))["item"]!;

        Assert.Equal("4140 pre-hard", (string?)grade["designation"]);
        Assert.Contains("4140 annealed", grade["alternatives"]!.AsArray().Select(other => (string?)other));
    }

    [Theory]
    [InlineData("/v1/grades", "group", "group")]
    [InlineData("/v1/sections", "shape", "shape")]
    [InlineData("/v1/blades", "toothMaterial", "toothMaterial")]
    public async Task Filter_picks_the_items_of_its_value(string list, string parameter, string member)
    {
        var all = (await Json(list))["items"]!.AsArray();
        var values = all.Select(item => (string)item![member]!).Distinct(StringComparer.Ordinal).ToList();
        var found = 0;
        foreach (var value in values)
        {
            var picked = (await Json($"{list}?{parameter}={Uri.EscapeDataString(value)}"))["items"]!.AsArray();
            Assert.All(picked, item => Assert.Equal(value, (string?)item![member]));
            found += picked.Count;
        }
        Assert.Equal(all.Count, found);
    }

    [Fact]
    public async Task Filter_and_designation_both_count()
    {
        Assert.Empty((await Json("/v1/sections?designation=IPE%20200&shape=tee"))["items"]!.AsArray());
        Assert.Single((await Json("/v1/sections?designation=IPE%20200&shape=iBeam"))["items"]!.AsArray());
    }

    [Theory]
    [InlineData("/v1/grades/1.4302", "unknown_grade", "1.4301")]
    [InlineData("/v1/grades?designation=1.4302", "unknown_grade", "1.4301")]
    [InlineData("/v1/sections/IPE%20201", "unknown_section", "IPE 200")]
    [InlineData("/v1/sections/HSS4X4X1/5", "unknown_section", "HSS4X4X1/4")]
    [InlineData("/v1/blades/34x1.1-4/7", "unknown_blade", "34x1.1-4/6")]
    [InlineData("/v1/blades?designation=", "unknown_blade", "x")]
    public async Task Unknown_designation_is_404_and_names_the_nearest(string path, string code, string nearest)
    {
        var fault = await Fault(path, 404, "urn:sawengine:problem:not-found");

        Assert.Equal(("designation", code), ((string?)fault["parameter"], (string?)fault["code"]));
        Assert.Contains(nearest, (string?)fault["detail"], StringComparison.Ordinal);
        Assert.Null(fault["pointer"]);
    }

    [Theory]
    [InlineData("/v1/grades/SS304", "304")]
    [InlineData("/v1/grades/A500%20Gr.%20B", "A500 Gr B")]
    [InlineData("/v1/grades/6061-T651", "6061-T6")]
    [InlineData("/v1/grades/S355J2%2BN", "S355J2")]
    [InlineData("/v1/sections/Flat%204x1/2", "Flat 4x0.5 in")]
    [InlineData("/v1/sections/HSS%204x4x.250", "HSS4X4X1/4")]
    [InlineData("/v1/sections/4%22%20SCH%2040%20PIPE", "NPS 4 Sch 40")]
    [InlineData("/v1/sections/RB%202", "Round 2 in")]
    public async Task Usual_spelling_is_found(string path, string designation) => Assert.Equal(designation, (string?)(await Json(path))["item"]!["designation"]);

    [Theory]
    [InlineData("/v1/grades/1.4302")]
    [InlineData("/v1/sections?designation=IPE%20201")]
    [InlineData("/v1/cheese")]
    public async Task Title_of_404_speaks_of_paths_and_designations(string path)
    {
        using var response = await Send(HttpMethod.Get, path);
        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
        Assert.Equal("Nothing is known here by this path or designation.", (string?)JsonNode.Parse(await response.Content.ReadAsStringAsync())!["title"]);
    }

    [Theory]
    [InlineData("/v1/grades?gruop=a", "gruop", "unknown_parameter", "group")]
    [InlineData("/v1/grades?lengthUnit=in", "lengthUnit", "unknown_parameter", "designation")]
    [InlineData("/v1/sections/IPE%20200?shape=iBeam", "shape", "unknown_parameter", "lengthUnit")]
    [InlineData("/v1/grades/304?x=1", "x", "unknown_parameter", "none")]
    [InlineData("/v1/grades?group=cheese", "group", "unknown_value", "titanium")]
    [InlineData("/v1/sections?shape=IBeam", "shape", "unknown_value", "iBeam")]
    [InlineData("/v1/sections?lengthUnit=cm", "lengthUnit", "unknown_value", "mm, in")]
    [InlineData("/v1/blades?toothMaterial=", "toothMaterial", "unknown_value", "carbide")]
    [InlineData("/v1/sections?shape=tee&shape=tee", "shape", "doubled_parameter", "once")]
    [InlineData("/v1/sections?designation=00000000001111111111222222222233333333334444444444555555555566666", "designation", "too_long", "64")]
    [InlineData("/v1/sections/00000000001111111111222222222233333333334444444444555555555566666", "designation", "too_long", "64")]
    public async Task Bad_parameter_is_400_and_names_what_is_known(string path, string parameter, string code, string known)
    {
        var fault = await Fault(path, 400, "urn:sawengine:problem:invalid-shape");

        Assert.Equal((parameter, code), ((string?)fault["parameter"], (string?)fault["code"]));
        Assert.Contains(known, (string?)fault["detail"], StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Answered))]
    public async Task Answer_that_the_caller_has_is_304(string path)
    {
        using var first = await Send(HttpMethod.Get, path);
        var tag = first.Headers.ETag!;
        Assert.False(tag.IsWeak);
        Assert.Equal("public, max-age=3600", first.Headers.CacheControl!.ToString());
        foreach (var known in new[] { tag.ToString(), "\"other\", " + tag, "W/" + tag, "*" })
        {
            using var again = await Send(HttpMethod.Get, path, known);
            Assert.Equal(HttpStatusCode.NotModified, again.StatusCode);
            Assert.Equal(tag, again.Headers.ETag);
            Assert.Equal("public, max-age=3600", again.Headers.CacheControl!.ToString());
            Assert.Empty(await again.Content.ReadAsByteArrayAsync());
        }
        using var changed = await Send(HttpMethod.Get, path, "\"other\"");
        Assert.Equal(HttpStatusCode.OK, changed.StatusCode);
        Assert.Equal(await first.Content.ReadAsStringAsync(), await changed.Content.ReadAsStringAsync());
    }

    [Theory]
    [MemberData(nameof(Answered))]
    public async Task Head_has_the_headers_of_get_and_no_body(string path)
    {
        using var get = await Send(HttpMethod.Get, path);
        using var head = await Send(HttpMethod.Head, path);

        Assert.Equal(get.StatusCode, head.StatusCode);
        Assert.Equal(Headers(get), Headers(head));
        Assert.Equal(get.Content.Headers.ContentLength, (await get.Content.ReadAsByteArrayAsync()).Length);
        Assert.Empty(await head.Content.ReadAsByteArrayAsync());
    }

    [Fact]
    public async Task Tag_goes_with_the_bytes()
    {
        var tagOfBody = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var path in AnsweredPaths.Concat(["/v1/sections", "/v1/blades", "/v1/blades?lengthUnit=in", "/v1/sections?shape=tee"]))
        {
            using var response = await Send(HttpMethod.Get, path);
            tagOfBody[await response.Content.ReadAsStringAsync()] = response.Headers.ETag!.Tag;
        }
        Assert.Equal(9, tagOfBody.Count);
        Assert.Equal(9, tagOfBody.Values.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Reference_data_do_not_wait_for_calculations()
    {
        var endpoints = host.Services.GetServices<EndpointDataSource>().SelectMany(source => source.Endpoints).OfType<RouteEndpoint>()
            .Where(endpoint => ListPaths.Any(list => endpoint.RoutePattern.RawText!.StartsWith(list, StringComparison.Ordinal)))
            .ToList();

        Assert.Equal(6, endpoints.Count);
        Assert.All(endpoints, endpoint => Assert.Null(endpoint.Metadata.GetMetadata<EnableRateLimitingAttribute>()));
    }

    [Fact]
    public async Task Parameters_values_and_examples_are_documented()
    {
        var paths = (await Json("/openapi/v1.json"))["paths"]!;

        foreach (var (list, filter, ids) in new[] { ("/v1/grades", "group", "listGrades getGrade"), ("/v1/sections", "shape", "listSections getSection"), ("/v1/blades", "toothMaterial", "listBlades getBlade") })
        {
            var (all, one) = (paths[list]!["get"]!, paths[list + "/{designation}"]!["get"]!);
            Assert.Equal(ids, $"{all["operationId"]} {one["operationId"]}");
            var parameters = all["parameters"]!.AsArray();
            Assert.NotEmpty(parameters.Single(parameter => (string?)parameter!["name"] == filter)!["schema"]!["enum"]!.AsArray());
            Assert.Equal(64, (int)parameters.Single(parameter => (string?)parameter!["name"] == "designation")!["schema"]!["maxLength"]!);
            Assert.Equal("path", (string?)one["parameters"]![0]!["in"]);
            var example = one["responses"]!["200"]!["content"]!["application/json"]!["example"]!;
            Assert.True(JsonNode.DeepEquals(example, await Json($"{list}/{one["parameters"]![0]!["example"]}")), list);
        }
    }

    private static IEnumerable<string?> Designations(JsonNode item) =>
        item["otherDesignations"]!.AsArray().Select(other => (string?)other).Append((string?)item["designation"]);

    private static string Headers(HttpResponseMessage response) => string.Join('\n', response.Headers.Concat(response.Content.Headers)
        .Where(header => header.Key != "Date").OrderBy(header => header.Key, StringComparer.Ordinal).Select(header => $"{header.Key}: {string.Join(", ", header.Value)}"));

    private async Task<JsonObject> Json(string path)
    {
        using var response = await Send(HttpMethod.Get, path);
        var body = await response.Content.ReadAsStringAsync();
        Assert.True(response.StatusCode == HttpStatusCode.OK, path + ": " + body);
        return JsonNode.Parse(body)!.AsObject();
    }

    private async Task<JsonNode> Fault(string path, int status, string type)
    {
        using var response = await Send(HttpMethod.Get, path);
        var problem = JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
        Assert.Equal((status, type), ((int)response.StatusCode, (string?)problem["type"]));
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType!.MediaType);
        return Assert.Single(problem["errors"]!.AsArray())!;
    }

    private async Task<HttpResponseMessage> Send(HttpMethod method, string path, string? ifNoneMatch = null)
    {
        using var request = new HttpRequestMessage(method, path);
        if (ifNoneMatch is not null)
            request.Headers.TryAddWithoutValidation("If-None-Match", ifNoneMatch);
        return await host.Client.SendAsync(request);
    }
}
