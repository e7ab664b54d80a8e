using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace SawEngine.Api.Wire;

/// <summary>
/// Compares a parsed body with the type that it is read into and finds every fault of shape at once. What is sound it copies, without members that are null,
/// since null and absent mean the same.
/// </summary>
internal sealed class ShapeWalk(bool lenient, Utf8JsonWriter copy)
{
    private const string SchemaVersionPointer = JsonPointer.Root + "/schemaVersion";

    /// <summary>Faults in the order of the body.</summary>
    public FaultList Faults { get; } = new();

    /// <summary>Unknown members that were left out because the caller prefers lenient handling.</summary>
    public FaultList Ignored { get; } = new();

    public void Visit(JsonElement value, JsonTypeInfo type) => Visit(value, type, JsonPointer.Root, Limits.TextLength);

    private void Visit(JsonElement value, JsonTypeInfo type, string pointer, int longestText)
    {
        switch (type.Kind)
        {
            case JsonTypeInfoKind.Object:
                VisitObject(value, type, pointer);
                break;
            case JsonTypeInfoKind.Enumerable:
                VisitList(value, Info(type.ElementType!), pointer);
                break;
            case JsonTypeInfoKind.Dictionary:
                VisitMap(value, Info(type.ElementType!), pointer);
                break;
            default:
                VisitLeaf(value, type.Type, pointer, longestText);
                break;
        }
    }

    private void VisitObject(JsonElement value, JsonTypeInfo type, string pointer)
    {
        copy.WriteStartObject();
        if (value.ValueKind != JsonValueKind.Object)
            Add(pointer, LeafShape.WrongType(value, "an object"));
        else
            VisitMembers(value, type, pointer);
        copy.WriteEndObject();
    }

    private void VisitMembers(JsonElement value, JsonTypeInfo type, string pointer)
    {
        var shape = ObjectShape.Of(type);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (name, memberValue) in Members(value, pointer))
        {
            if (shape.Find(name) is not { } member)
                AddUnknown(pointer, name, shape);
            else if (!seen.Add(name))
                Faults.Add(JsonPointer.Member(pointer, name), FaultCode.DoubledMember, $"`{name}` stands more than once.");
            else
                VisitMember(memberValue, member, JsonPointer.Member(pointer, name));
        }
        foreach (var member in shape.Members.Where(member => member.IsRequired && !seen.Contains(member.Name)))
            Faults.Add(pointer, FaultCode.MissingMember, $"`{member.Name}` is missing.");
    }

    private void VisitMember(JsonElement value, MemberShape member, string pointer)
    {
        if (value.ValueKind == JsonValueKind.Null)
        {
            if (member.IsRequired)
                Faults.Add(pointer, FaultCode.NullNotAllowed, $"`{member.Name}` is required and may not be null.");
            return;
        }
        copy.WritePropertyName(member.Name);
        Visit(value, member.Type, pointer, member.Most ?? Limits.TextLength);
        if (pointer == SchemaVersionPointer && LeafShape.TryGetText(value, out var version) && !Versions.IsRead(version))
            Faults.Add(
                pointer,
                FaultCode.UnsupportedSchemaVersion,
                $"Must be a version {Versions.SchemaMajor}.x; this service reads and writes {Versions.Schema}.");
    }

    private void VisitList(JsonElement value, JsonTypeInfo itemType, string pointer)
    {
        copy.WriteStartArray();
        if (value.ValueKind != JsonValueKind.Array)
            Add(pointer, LeafShape.WrongType(value, "a list"));
        else
        {
            var index = 0;
            foreach (var item in value.EnumerateArray())
                VisitItem(item, itemType, JsonPointer.Item(pointer, index++));
        }
        copy.WriteEndArray();
    }

    private void VisitItem(JsonElement item, JsonTypeInfo itemType, string pointer)
    {
        if (item.ValueKind == JsonValueKind.Null)
            Faults.Add(pointer, FaultCode.NullNotAllowed, "A list may not contain null.");
        else
            Visit(item, itemType, pointer, Limits.TextLength);
    }

    private void VisitMap(JsonElement value, JsonTypeInfo itemType, string pointer)
    {
        copy.WriteStartObject();
        if (value.ValueKind != JsonValueKind.Object)
            Add(pointer, LeafShape.WrongType(value, "an object"));
        else
            VisitEntries(value, itemType, pointer);
        copy.WriteEndObject();
    }

    private void VisitEntries(JsonElement value, JsonTypeInfo itemType, string pointer)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (name, entry) in Members(value, pointer))
        {
            if (!seen.Add(name))
                Faults.Add(JsonPointer.Member(pointer, name), FaultCode.DoubledMember, $"{Quoted.Text(name)} stands more than once.");
            else if (entry.ValueKind == JsonValueKind.Null)
                continue;
            else
            {
                copy.WritePropertyName(name);
                Visit(entry, itemType, JsonPointer.Member(pointer, name), Limits.TextLength);
            }
        }
    }

    /// <summary>Members whose names can be read and pointed to; the others are faults of the object.</summary>
    private IEnumerable<(string Name, JsonElement Value)> Members(JsonElement value, string pointer)
    {
        foreach (var member in value.EnumerateObject())
        {
            if (!TryGetName(member, out var name))
                Faults.Add(pointer, FaultCode.InvalidCharacter, "The name of a member contains half of a surrogate pair.");
            else if (name.Length > Limits.TextLength)
                Faults.Add(pointer, FaultCode.TooLong, $"The name of a member is longer than {Limits.TextLength} characters.");
            else
                yield return (name, member.Value);
        }
    }

    private void VisitLeaf(JsonElement value, Type type, string pointer, int longestText)
    {
        var fault = LeafShape.FaultOf(value, type, longestText);
        if (fault is null)
            CopyLeaf(value, type);
        else
        {
            Add(pointer, fault);
            copy.WriteNullValue();
        }
    }

    /// <summary>Copies a value; an integer may be written as 5.0 or 1e2, but is read only without point and exponent.</summary>
    private void CopyLeaf(JsonElement value, Type type)
    {
        var read = Nullable.GetUnderlyingType(type) ?? type;
        if (read == typeof(int) || read == typeof(long))
            copy.WriteRawValue(decimal.Truncate(value.TryGetDecimal(out var number) ? number : 0).ToString("0", CultureInfo.InvariantCulture));
        else if (read == typeof(decimal) && WrittenNumber.Of(value.GetRawText()).IsZero)
            copy.WriteNumberValue(0);
        else
            value.WriteTo(copy);
    }

    private void AddUnknown(string parent, string name, ObjectShape shape)
    {
        var list = lenient ? Ignored : Faults;
        var question = list.IsFull ? "" : NearestName.Question(name, shape.Members.Select(member => member.Name));
        list.Add(JsonPointer.Member(parent, name), FaultCode.UnknownMember, $"{Quoted.Text(name)} is not a member of this object.{question}");
    }

    private void Add(string pointer, LeafFault fault) => Faults.Add(pointer, fault.Code, fault.Detail);

    private static bool TryGetName(JsonProperty member, out string name)
    {
        try
        {
            name = member.Name;
            return true;
        }
        catch (InvalidOperationException)
        {
            name = "";
            return false;
        }
    }

    private static JsonTypeInfo Info(Type type) => WireJson.Options.GetTypeInfo(type);
}
