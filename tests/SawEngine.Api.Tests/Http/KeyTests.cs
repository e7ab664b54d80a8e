using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using SawEngine.Api.CommandLine;
using SawEngine.Api.Http.Security;

namespace SawEngine.Api.Tests.Http;

public sealed class KeyTests(KeyTests.KeyedHost host) : IClassFixture<KeyTests.KeyedHost>
{
    // SHA-256 of the three letters "abc": FIPS 180-2, appendix B.1.
    private const string HashOfAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    private const string HashOfNothing = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";

    public static TheoryData<string?> BadKeys => [null, "", "abd", "ABC", "abc abc", HashOfAbc, new string('x', 8_000), "ключ"];

    public static TheoryData<string> Closed => ["/v1/service", "/v1/nests", "/v1/nothing", "/nothing"];

    [Theory]
    [InlineData("abc", "erp")]
    [InlineData("def", "erp")]
    [InlineData("ghi", "mes")]
    public async Task Valid_key_is_let_in_and_its_id_alone_is_logged(string key, string id)
    {
        using var response = await Get("/v1/service", key);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);

        var line = await host.Log.RequestLine(entry => Equals(entry.Members["KeyId"], id));
        Assert.Equal("/v1/service", line.Members["Route"]);
        Assert.All(host.Log.Entries, entry => Assert.DoesNotContain($"key {key}", entry.Message, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(BadKeys))]
    public async Task Missing_malformed_and_wrong_keys_are_refused_alike(string? key)
    {
        using var response = await Get("/v1/service", key);
        using var without = await Get("/v1/service", null);

        Assert.Equal(HttpStatusCode.Unauthorized, response.StatusCode);
        Assert.Equal("ApiKey", Assert.Single(response.Headers.WwwAuthenticate).ToString());
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        var (problem, same) = (await Problem(response), await Problem(without));
        Assert.Equal("urn:sawengine:problem:unauthorized", (string?)problem["type"]);
        Assert.True(JsonNode.DeepEquals(problem, same));
        Assert.Equal(without.Headers.Select(header => header.Key), response.Headers.Select(header => header.Key));
    }

    [Theory]
    [MemberData(nameof(Closed))]
    public async Task Everything_else_needs_a_key(string path)
    {
        foreach (var method in new[] { HttpMethod.Get, HttpMethod.Post, HttpMethod.Options, HttpMethod.Delete })
        {
            using var request = new HttpRequestMessage(method, path);
            using var response = await host.CreateClient().SendAsync(request);
            Assert.Equal(HttpStatusCode.Unauthorized, response.StatusCode);
        }
    }

    [Theory]
    [InlineData("/health/live")]
    [InlineData("/health/ready")]
    [InlineData("/openapi/v1.json")]
    [InlineData("/openapi/3.0/v1.json")]
    [InlineData("/docs/index.html")]
    public async Task Probes_and_documents_need_none(string path)
    {
        using var response = await Get(path, null);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    [Theory]
    [InlineData("/v1/service?X-Api-Key=abc")]
    [InlineData("/v1/service?x-api-key=abc&key=abc&apiKey=abc&api_key=abc")]
    public async Task Key_in_the_query_is_not_looked_at(string path)
    {
        using var response = await Get(path, null);

        Assert.Equal(HttpStatusCode.Unauthorized, response.StatusCode);
    }

    [Fact]
    public async Task Two_keys_in_one_request_are_none()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/v1/service");
        request.Headers.Add(ApiKeyHandler.Header, ["abc", "def"]);
        using var response = await host.CreateClient().SendAsync(request);

        Assert.Equal(HttpStatusCode.Unauthorized, response.StatusCode);
    }

    [Theory]
    [InlineData("must be a list", "ApiKeys", "abc")]
    [InlineData("ApiKeys:0:Sha256 must be", "ApiKeys:0:Id", "erp")]
    [InlineData("ApiKeys:0:Sha256 must be", "ApiKeys:0:Id", "erp", "ApiKeys:0:Sha256", "")]
    [InlineData("ApiKeys:0:Sha256 must be", "ApiKeys:0:Id", "erp", "ApiKeys:0:Sha256", "abc")]
    [InlineData("ApiKeys:0:Sha256 must be", "ApiKeys:0:Id", "erp", "ApiKeys:0:Sha256", HashOfAbc + "\n")]
    [InlineData("ApiKeys:0:Sha256 must be", "ApiKeys:0:Id", "erp", "ApiKeys:0:Sha256", "ga7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")]
    [InlineData("ApiKeys:0:Id must have", "ApiKeys:0:Sha256", HashOfAbc)]
    [InlineData("ApiKeys:0:Id must have", "ApiKeys:0:Id", "a b", "ApiKeys:0:Sha256", HashOfAbc)]
    [InlineData("ApiKeys:0:Key is not known", "ApiKeys:0:Id", "erp", "ApiKeys:0:Key", "abc", "ApiKeys:0:Sha256", HashOfAbc)]
    [InlineData("more than once", "ApiKeys:0:Id", "erp", "ApiKeys:0:Sha256", HashOfAbc, "ApiKeys:1:Id", "erp", "ApiKeys:1:Sha256", HashOfAbc)]
    [InlineData("more than once", "ApiKeys:0:Id", "erp", "ApiKeys:0:Sha256", HashOfAbc, "ApiKeys:1:Id", "mes", "ApiKeys:1:Sha256", HashOfAbc)]
    public void Bad_configuration_is_told(string message, params string[] settings)
    {
        var wrong = Assert.Throws<InvalidConfigurationException>(() => ApiKeys.Read(Configuration(settings)));

        Assert.Contains(message, wrong.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Keys_are_found_by_their_published_hash_in_either_case()
    {
        var keys = ApiKeys.Read(Configuration("ApiKeys:0:Id", "a", "ApiKeys:0:Sha256", HashOfAbc, "ApiKeys:1:Id", "b", "ApiKeys:1:Sha256", HashOfNothing.ToUpperInvariant()));

        Assert.True(keys.AreRequired);
        Assert.Equal("a", keys.Find("abc"));
        Assert.Equal("b", keys.Find(""));
        Assert.Null(keys.Find("abcd"));
        Assert.False(ApiKeys.Read(Configuration()).AreRequired);
    }

    [Fact]
    public async Task New_key_is_let_in_by_the_hash_that_is_printed_with_it()
    {
        var (first, second) = (await NewKey("erp"), await NewKey("erp"));
        var keys = ApiKeys.Read(Configuration("ApiKeys:0:Id", (string)first["id"]!, "ApiKeys:0:Sha256", (string)first["sha256"]!));

        Assert.Equal("erp", keys.Find((string)first["key"]!));
        Assert.Null(keys.Find((string)second["key"]!));
        // 32 random bytes are 43 digits of base64.
        Assert.Matches("^saw_[A-Za-z0-9_-]{43}$", (string?)first["key"]);
    }

    [Fact]
    public async Task Key_for_something_that_is_no_id_is_refused()
    {
        using var error = new StringWriter();
        var key = Commands.All([]).Single(command => command.Verb == "key");

        Assert.Equal(2, await key.Run("a b", new(Stream.Null, Stream.Null, error), CancellationToken.None));
        Assert.NotEmpty(error.ToString());
    }

    [Theory]
    [InlineData("http://localhost:5080", true)]
    [InlineData("http://127.0.0.1:5080", true)]
    [InlineData("http://127.8.9.1:5080", true)]
    [InlineData("http://[::1]:5080", true)]
    [InlineData("http://unix:/run/saw.sock", true)]
    [InlineData("http://[::]:8080", false)]
    [InlineData("http://0.0.0.0:8080", false)]
    [InlineData("http://*:8080", false)]
    [InlineData("https://+:8443", false)]
    [InlineData("http://192.0.2.1:80", false)]
    [InlineData("http://localhost.example:80", false)]
    public void Loopback_is_told_from_the_rest(string url, bool isLoopback) => Assert.Equal(isLoopback, KeyedAccess.IsLoopback(url));

    private static async Task<JsonNode> NewKey(string id)
    {
        using var output = new MemoryStream();
        var key = Commands.All([]).Single(command => command.Verb == "key");
        Assert.Equal(0, await key.Run(id, new(Stream.Null, output, TextWriter.Null), CancellationToken.None));
        return JsonNode.Parse(Encoding.UTF8.GetString(output.ToArray()))!;
    }

    private static IConfiguration Configuration(params string[] settings) =>
        new ConfigurationBuilder().AddInMemoryCollection(settings.Chunk(2).Select(pair => KeyValuePair.Create(pair[0], (string?)pair[1]))).Build();

    private static async Task<JsonObject> Problem(HttpResponseMessage response)
    {
        var problem = JsonNode.Parse(await response.Content.ReadAsStringAsync())!.AsObject();
        Assert.True(problem.Remove("traceId"));
        return problem;
    }

    private async Task<HttpResponseMessage> Get(string path, string? key)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        if (key is not null)
            request.Headers.TryAddWithoutValidation(ApiKeyHandler.Header, key);
        return await host.CreateClient().SendAsync(request);
    }

    public sealed class KeyedHost : WebApplicationFactory<Program>
    {
        public CapturedLog Log { get; } = new();

        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            // SHA-256 of "def" and "ghi": made with sha256sum.
            string[] settings =
            [
                "ApiKeys:0:Id", "erp", "ApiKeys:0:Sha256", HashOfAbc,
                "ApiKeys:1:Id", "erp", "ApiKeys:1:Sha256", "cb8379ac2098aa165029e3938a51da0bcecfc008fd6795f401178647f96c5b34",
                "ApiKeys:2:Id", "mes", "ApiKeys:2:Sha256", "50ae61e841fac4e8f9e40baf2ad36ec868922ea48368c18f9535e47db56dd7fb",
            ];
            foreach (var pair in settings.Chunk(2))
                builder.UseSetting(pair[0], pair[1]);
            builder.ConfigureTestServices(services => services.AddSingleton<ILoggerProvider>(Log));
        }
    }
}
