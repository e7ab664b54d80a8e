using System.Collections;
using System.ComponentModel.DataAnnotations;
using System.Globalization;
using System.Text.Json.Serialization.Metadata;

namespace SawEngine.Api.Wire.Rules;

/// <summary>
/// Holds a request against the bounds that stand on its members: <see cref="RangeAttribute"/>, <see cref="MinLengthAttribute"/>, and
/// <see cref="MaxLengthAttribute"/> on lists. The OpenAPI document is made from the same attributes. Lists that are too long are not looked into.
/// </summary>
public sealed class Bounds(LengthUnit unit)
{
    /// <summary>What is out of bounds, in the order of the request's members.</summary>
    public FaultList Faults { get; } = new();

    /// <summary>Whether a list is so long that the other rules are not to be tried.</summary>
    public bool TooMany { get; private set; }

    public void Check(object request) => CheckObject(request, JsonPointer.Root);

    private void CheckObject(object value, string pointer)
    {
        foreach (var property in WireJson.Options.GetTypeInfo(value.GetType()).Properties)
        {
            if (property.Get?.Invoke(value) is { } member)
                CheckMember(member, property, JsonPointer.Member(pointer, property.Name));
        }
    }

    private void CheckMember(object member, JsonPropertyInfo property, string pointer)
    {
        var least = Attribute<MinLengthAttribute>(property)?.Length ?? 0;
        switch (member)
        {
            case string text when text.Length < least:
                Faults.Add(pointer, FaultCode.Empty, "May not be empty.");
                break;
            case decimal or int or long when Attribute<RangeAttribute>(property) is { } range:
                CheckNumber(Convert.ToDecimal(member, CultureInfo.InvariantCulture), range, pointer);
                break;
            case IEnumerable items and not string:
                CheckItems([.. items.Cast<object>()], least, Attribute<MaxLengthAttribute>(property)?.Length ?? int.MaxValue, pointer);
                break;
            default:
                CheckChild(member, pointer);
                break;
        }
    }

    private void CheckItems(List<object> items, int least, int most, string pointer)
    {
        if (items.Count < least)
            Faults.Add(pointer, FaultCode.Empty, least == 1 ? "May not be empty." : $"Must have at least {least} entries, but has {items.Count}.");
        else if (items.Count > most)
        {
            TooMany = true;
            Faults.Add(pointer, FaultCode.TooMany, $"Must have at most {most} entries, but has {items.Count}.");
        }
        else
        {
            for (var i = 0; i < items.Count; i++)
                CheckChild(items[i], JsonPointer.Item(pointer, i));
        }
    }

    private void CheckChild(object value, string pointer)
    {
        if (WireJson.Options.GetTypeInfo(value.GetType()).Kind == JsonTypeInfoKind.Object)
            CheckObject(value, pointer);
    }

    private void CheckNumber(decimal value, RangeAttribute range, string pointer)
    {
        var (lowest, highest) = (ToDecimal(range.Minimum), ToDecimal(range.Maximum));
        if (value < lowest || (range.MinimumIsExclusive && value == lowest))
            Faults.Add(pointer, lowest == 0 && range.MinimumIsExclusive ? FaultCode.MustBePositive : FaultCode.TooSmall,
                $"Must be {(range.MinimumIsExclusive ? "greater than" : "at least")} {Shown(lowest)}, but is {Shown(value)}.");
        else if (value > highest || (range.MaximumIsExclusive && value == highest))
            Faults.Add(pointer, FaultCode.TooLarge, $"Must be {(range.MaximumIsExclusive ? "less than" : "at most")} {Shown(highest)}, but is {Shown(value)}.");
        else if (range is QuantityRangeAttribute quantity && value % quantity.Grid(unit) != 0)
            Faults.Add(pointer, FaultCode.TooFine, $"Must be a multiple of {Shown(quantity.Grid(unit))}, but is {Shown(value)}.");
    }

    private static decimal ToDecimal(object bound) => Convert.ToDecimal(bound, CultureInfo.InvariantCulture);

    private static string Shown(decimal value) => ShortestDecimalConverter.Text(value);

    private static T? Attribute<T>(JsonPropertyInfo property) where T : Attribute =>
        property.AttributeProvider?.GetCustomAttributes(typeof(T), true) is [T attribute, ..] ? attribute : null;
}
