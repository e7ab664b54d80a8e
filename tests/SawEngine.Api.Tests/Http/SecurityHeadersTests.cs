namespace SawEngine.Api.Tests.Http;

[Collection(HostCollection.Name)]
public sealed class SecurityHeadersTests(ServiceHost host)
{
    [Theory]
    [InlineData("GET", "/v1/service", 200)]
    [InlineData("HEAD", "/v1/service", 200)]
    [InlineData("GET", "/v1/nothing", 404)]
    [InlineData("GET", "/v1/nests", 405)]
    [InlineData("POST", "/v1/nests", 415)]
    [InlineData("GET", "/health/live", 200)]
    [InlineData("GET", "/openapi/v1.json", 200)]
    [InlineData("GET", "/documents", 404)]
    public async Task Every_answer_carries_them(string method, string path, int status)
    {
        using var response = await Send(method, path);

        Assert.Equal(status, (int)response.StatusCode);
        AssertCommon(response);
        Assert.Equal("default-src 'none'; frame-ancestors 'none'", Header(response, "Content-Security-Policy"));
        Assert.Equal("no-store", Header(response, "Cache-Control"));
    }

    [Theory]
    [InlineData("/docs/index.html")]
    [InlineData("/docs/index.js")]
    [InlineData("/docs/swagger-ui-bundle.js")]
    [InlineData("/docs/swagger-ui.css")]
    public async Task Page_may_run_its_own_files_and_nothing_else(string path)
    {
        using var response = await Send("GET", path);

        Assert.Equal(200, (int)response.StatusCode);
        AssertCommon(response);
        var policy = Header(response, "Content-Security-Policy")!.Split("; ");
        Assert.Contains("default-src 'none'", policy);
        Assert.Contains("script-src 'self'", policy);
        Assert.Contains("frame-ancestors 'none'", policy);
    }

    [Fact]
    public async Task Page_has_no_script_within_itself()
    {
        var page = await host.Client.GetStringAsync(new Uri("/docs/index.html", UriKind.Relative));

        Assert.Equal(page.Split("<script ").Length, page.Split("<script").Length);
        Assert.Equal(page.Split("<script ").Length, page.Split("\" charset=\"utf-8\"></script>").Length);
        Assert.DoesNotContain(" on", string.Concat(page.Split('<').Where(tag => tag.Contains('=', StringComparison.Ordinal))), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_https_is_told_to_stay_https()
    {
        using var plain = await Send("GET", "/v1/service");
        using var secure = await Send("GET", "https://localhost/v1/service");

        Assert.Null(Header(plain, "Strict-Transport-Security"));
        Assert.StartsWith("max-age=", Header(secure, "Strict-Transport-Security"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Other_origins_are_given_nothing()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/v1/service");
        request.Headers.Add("Origin", "https://elsewhere.example");
        using var response = await host.Client.SendAsync(request);

        Assert.DoesNotContain(response.Headers, header => header.Key.StartsWith("Access-Control", StringComparison.OrdinalIgnoreCase));
    }

    private static void AssertCommon(HttpResponseMessage response)
    {
        Assert.Equal("nosniff", Header(response, "X-Content-Type-Options"));
        Assert.Equal("no-referrer", Header(response, "Referrer-Policy"));
        Assert.Equal("same-origin", Header(response, "Cross-Origin-Resource-Policy"));
        Assert.Null(Header(response, "Server"));
    }

    private static string? Header(HttpResponseMessage response, string name) =>
        response.Headers.TryGetValues(name, out var values) ? Assert.Single(values) : null;

    private async Task<HttpResponseMessage> Send(string method, string path)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), path);
        return await host.Client.SendAsync(request);
    }
}
