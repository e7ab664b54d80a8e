using System.Collections.Concurrent;
using System.Text.Json.Serialization.Metadata;

namespace SawEngine.Api.Wire;

/// <summary>What a wire type says of its members; looked up once for each type.</summary>
internal sealed class ObjectShape
{
    private static readonly ConcurrentDictionary<Type, ObjectShape> Known = new();

    private readonly Dictionary<string, MemberShape> _byName;

    private ObjectShape(JsonTypeInfo type)
    {
        Members = [.. type.Properties.Select(property => new MemberShape(property))];
        _byName = Members.ToDictionary(member => member.Name, StringComparer.Ordinal);
    }

    /// <summary>The members in their order.</summary>
    public IReadOnlyList<MemberShape> Members { get; }

    /// <summary>The shape of a type.</summary>
    public static ObjectShape Of(JsonTypeInfo type) => Known.GetOrAdd(type.Type, static (_, info) => new(info), type);

    /// <summary>The member of a name; null where there is none.</summary>
    public MemberShape? Find(string name) => _byName.GetValueOrDefault(name);
}
