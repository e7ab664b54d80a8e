using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using KiotaGenerated;
using Microsoft.Kiota.Abstractions;
using Microsoft.Kiota.Abstractions.Authentication;
using Microsoft.Kiota.Abstractions.Serialization;
using Microsoft.Kiota.Http.HttpClientLibrary;
using Microsoft.Kiota.Serialization.Json;

namespace Clients;

internal sealed class KiotaClient(string url) : IClient
{
    private readonly ApiClient _client = new(new HttpClientRequestAdapter(new AnonymousAuthenticationProvider()) { BaseUrl = url });

    public string Name => "Kiota";

    public async Task<JsonNode?> Call(Called operation)
    {
        var builder = operation.Path.Split('/', StringSplitOptions.RemoveEmptyEntries).Aggregate((object)_client, (at, segment) => Step(at, segment, operation));
        var name = char.ToUpperInvariant(operation.Method[0]) + operation.Method[1..] + "Async";
        var method = builder.GetType().GetMethod(name) ?? throw new MissingMethodException(name);
        var call = (Task)method.Invoke(builder, [.. method.GetParameters().Select(parameter => Value(parameter, operation))])!;
        await call;
        var answer = (IParsable)((dynamic)call).Result;
        Unknown.Refuse(answer);
        using var writer = new JsonSerializationWriter();
        writer.WriteObjectValue(null, answer);
        return JsonNode.Parse(writer.GetSerializedContent());
    }

    private static object Step(object builder, string segment, Called operation)
    {
        if (segment.StartsWith('{'))
        {
            var indexer = builder.GetType().GetProperties().Single(p => p.GetIndexParameters() is [{ ParameterType: var type }] && type == typeof(string));
            return indexer.GetValue(builder, [operation.Parameters[segment.Trim('{', '}')].ToString()])!;
        }
        var name = string.Concat(segment.Split('-').Select(word => char.ToUpperInvariant(word[0]) + word[1..]));
        return (builder.GetType().GetProperty(name) ?? throw new MissingMemberException(builder.GetType().Name, name)).GetValue(builder)!;
    }

    private static object? Value(ParameterInfo parameter, Called operation) =>
        parameter.ParameterType == typeof(CancellationToken) ? CancellationToken.None
        : typeof(IParsable).IsAssignableFrom(parameter.ParameterType) ? Generic(nameof(Read), parameter.ParameterType, operation.Example!)
        : parameter.ParameterType.GenericTypeArguments is [{ GenericTypeArguments: [var query] }] ? Generic(nameof(Query), query, operation)
        : null;

    private static object Generic(string method, Type type, object argument) =>
        typeof(KiotaClient).GetMethod(method, BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(type).Invoke(null, [argument])!;

    private static Action<RequestConfiguration<T>> Query<T>(Called operation)
        where T : class, new() => configuration =>
        {
            foreach (var property in typeof(T).GetProperties())
            {
                if (operation.Parameters.TryGetValue(property.GetCustomAttribute<QueryParameterAttribute>()?.TemplateName ?? property.Name, out var value))
                    property.SetValue(configuration.QueryParameters, value.Deserialize(property.PropertyType));
            }
        };

    private static T Read<T>(string text)
        where T : IParsable, new()
    {
        using var document = JsonDocument.Parse(text);
        var value = new JsonParseNode(document.RootElement).GetObjectValue(_ => new T())!;
        Unknown.Refuse(value);
        return value;
    }
}
