using System.Reflection;

namespace SawEngine.Api.Wire;

/// <summary>Values that an open text of an answer can have today; clients must expect others.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class KnownValuesAttribute(params string[] values) : Attribute
{
    /// <summary>The texts of an enum, or the codes of a list of them, and some more.</summary>
    public KnownValuesAttribute(Type type, params string[] more) : this([.. type.IsEnum ? WireEnum.Texts(type) : Codes(type), .. more])
    {
    }

    /// <summary>The values.</summary>
    public IReadOnlyList<string> Values { get; } = values;

    private static IEnumerable<string> Codes(Type type) =>
        type.GetFields(BindingFlags.Public | BindingFlags.Static).Where(field => field.IsLiteral).Select(field => (string)field.GetRawConstantValue()!);
}
