// Calls every operation by both generated clients, found by name as a caller would write them, and writes what each answer carried.
using System.Text.Json;
using System.Text.Json.Nodes;
using Clients;

var (url, operationsFile) = (args[0], args[1]);
var operations = JsonSerializer.Deserialize<List<Called>>(File.ReadAllText(operationsFile), JsonSerializerOptions.Web)!;
var carried = new JsonObject();
foreach (var client in new IClient[] { new NSwagClient(url), new KiotaClient(url) })
{
    var answers = new JsonObject();
    foreach (var operation in operations)
        answers[operation.Id] = await client.Call(operation);
    carried[client.Name] = answers;
}
Console.WriteLine(carried.ToJsonString());

namespace Clients
{
    /// <summary>An operation of the document, with the values of its example.</summary>
    internal sealed record Called(string Id, string Method, string Path, Dictionary<string, JsonElement> Parameters, string? Example);

    internal interface IClient
    {
        string Name { get; }

        Task<JsonNode?> Call(Called operation);
    }
}
