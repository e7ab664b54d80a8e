using System.Collections;

namespace Clients;

/// <summary>Members that a generated type does not know land in its bag of additional ones; in an answer of the same version none may.</summary>
internal static class Unknown
{
    public static void Refuse(object? value)
    {
        if (value is null or string || value.GetType() is { IsPrimitive: true } or { IsEnum: true })
            return;
        if (value is IEnumerable list)
        {
            foreach (var item in list)
                Refuse(item);
            return;
        }
        var properties = value.GetType().GetProperties().Where(p => p.GetIndexParameters().Length == 0).ToList();
        if (value.GetType().Namespace?.Contains("Generated", StringComparison.Ordinal) != true)
            return;
        foreach (var property in properties)
        {
            // A type of nothing but additional members is a map.
            if (property.Name is "AdditionalProperties" or "AdditionalData" && properties.Count > 1 && property.GetValue(value) is IDictionary { Count: > 0 } bag)
                throw new InvalidDataException($"{value.GetType().Name} does not know {string.Join(", ", bag.Keys.Cast<object>())}");
            Refuse(property.GetValue(value));
        }
    }
}
