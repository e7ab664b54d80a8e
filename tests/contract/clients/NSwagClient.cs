using System.Reflection;
using System.Text.Json.Nodes;
using Newtonsoft.Json;
using NSwagGenerated;

namespace Clients;

internal sealed class NSwagClient(string url) : IClient
{
    private readonly Client _client = new(new HttpClient()) { BaseUrl = url };

    public string Name => "NSwag";

    public async Task<JsonNode?> Call(Called operation)
    {
        var name = char.ToUpperInvariant(operation.Id[0]) + operation.Id[1..] + "Async";
        var method = typeof(Client).GetMethods().Where(m => m.Name == name).MaxBy(m => m.GetParameters().Length) ?? throw new MissingMethodException(name);
        var call = (Task)method.Invoke(_client, [.. method.GetParameters().Select(parameter => Value(parameter, operation))])!;
        await call;
        var answer = ((dynamic)call).Result;
        Unknown.Refuse((object)answer);
        return JsonNode.Parse(JsonConvert.SerializeObject((object)answer));
    }

    private static object? Value(ParameterInfo parameter, Called operation) =>
        parameter.ParameterType == typeof(CancellationToken) ? CancellationToken.None
        : parameter.Name == "body" ? JsonConvert.DeserializeObject(operation.Example!, parameter.ParameterType)
        : operation.Parameters.TryGetValue(parameter.Name!, out var value) ? JsonConvert.DeserializeObject(value.GetRawText(), parameter.ParameterType)
        : null;
}
