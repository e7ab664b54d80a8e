using SawEngine.Api.Http;

namespace SawEngine.Api.Tests.Http;

[Collection(HostCollection.Name)]
public sealed class AcceptedTests(ServiceHost host)
{
    [Theory]
    [InlineData(true)]
    [InlineData(true, "")]
    [InlineData(true, "*/*")]
    [InlineData(true, "application/json")]
    [InlineData(true, "APPLICATION/JSON; charset=utf-8")]
    [InlineData(true, "application/*;q=0.1")]
    [InlineData(true, "application/xml, application/json;q=0.5")]
    [InlineData(true, "application/xml", "application/json")]
    [InlineData(true, "*/*;q=0, application/json")]
    [InlineData(true, "no media type")]
    [InlineData(false, "application/xml")]
    [InlineData(false, "text/*")]
    [InlineData(false, "application/json;q=0")]
    [InlineData(false, "application/json;q=0, */*")]
    [InlineData(false, "application/problem+json")]
    public void Json_is_admitted_or_not(bool expected, params string[] accept) => Assert.Equal(expected, Accepted.Admits(accept, "application/json"));

    [Theory]
    [InlineData("GET", "/v1/service")]
    [InlineData("POST", "/v1/nests")]
    public async Task Caller_who_accepts_no_json_is_406(string method, string path)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), path);
        request.Headers.Add("Accept", "application/xml");
        using var response = await host.Client.SendAsync(request);

        Assert.Equal(406, (int)response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        Assert.Contains("urn:sawengine:problem:not-acceptable", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Refusal_is_a_problem_whatever_is_accepted()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/v1/nothing");
        request.Headers.Add("Accept", "text/html");
        using var response = await host.Client.SendAsync(request);

        Assert.Equal(404, (int)response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
    }
}
