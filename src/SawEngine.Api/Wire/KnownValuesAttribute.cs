namespace SawEngine.Api.Wire;

/// <summary>Values that an open text of an answer can have today; clients must expect others.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class KnownValuesAttribute(params string[] values) : Attribute
{
    public KnownValuesAttribute(Type type) : this([.. WireEnum.Texts(type)])
    {
    }

    /// <summary>The values.</summary>
    public IReadOnlyList<string> Values { get; } = values;
}
