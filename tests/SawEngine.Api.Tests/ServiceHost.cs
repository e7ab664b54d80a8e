using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Mvc.Testing;

namespace SawEngine.Api.Tests;

/// <summary>The real host, started once for all tests that ask it.</summary>
public sealed class ServiceHost : WebApplicationFactory<Program>
{
    private readonly Lazy<HttpClient> _client;

    public ServiceHost() => _client = new(CreateClient);

    public HttpClient Client => _client.Value;

    public Task<HttpResponseMessage> Post(string path, string json) => Client.PostAsync(path, Json(json));

    /// <summary>Posts, asserts the status with the body as message, and reads the body.</summary>
    public async Task<JsonObject> Post(string path, string json, int status)
    {
        using var response = await Post(path, json);
        var body = await response.Content.ReadAsStringAsync();
        Assert.True((int)response.StatusCode == status, $"{(int)response.StatusCode}: {body}");
        return JsonNode.Parse(body)!.AsObject();
    }

    public static ByteArrayContent Json(string json) => Json(Encoding.UTF8.GetBytes(json));

    public static ByteArrayContent Json(byte[] bytes) =>
        new(bytes) { Headers = { ContentType = new MediaTypeHeaderValue("application/json") } };
}
