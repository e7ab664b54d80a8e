using System.Collections;
using System.ComponentModel.DataAnnotations;
using System.Globalization;
using System.Text.Json.Serialization.Metadata;

namespace SawEngine.Api.Wire.Rules;

/// <summary>
/// Holds a request against the bounds that stand on its members: <see cref="RangeAttribute"/>, <see cref="MinLengthAttribute"/>, and
/// <see cref="MaxLengthAttribute"/> on lists; a range on a list of numbers bounds each of them.
/// A length is stated as number or text, once. The OpenAPI document is made from the same attributes. Lists that are too long are not looked into.
/// </summary>
public sealed class Bounds(LengthUnit unit)
{
    /// <summary>What is out of bounds, in the order of the request's members.</summary>
    public FaultList Faults { get; } = new();

    /// <summary>Whether a list is so long that the other rules are not to be tried.</summary>
    public bool TooMany { get; private set; }

    public void Check(object request) => CheckChild(request, JsonPointer.Root);

    private void CheckObject(object value, JsonTypeInfo type, string pointer)
    {
        if (value is IStatedLength length)
            CheckLength(length, pointer);
        foreach (var member in ObjectShape.Of(type).Members)
        {
            if (member.Of(value) is { } stated)
                CheckMember(stated, member, JsonPointer.Member(pointer, member.Name));
        }
    }

    private void CheckLength(IStatedLength stated, string pointer)
    {
        var text = JsonPointer.Member(pointer, "lengthText");
        if (stated is { Length: null, LengthText: null })
            Faults.Add(pointer, FaultCode.LengthRequired, "State the length in `length`, or in feet and inches in `lengthText`.");
        else if (stated is { Length: not null, LengthText: not null })
            Faults.Add(text, FaultCode.LengthGivenTwice, "The length stands in `length` already; state one of the two.");
        else if (stated.LengthText is { } written && LengthText.FaultOf(written, unit) is { } fault)
            Faults.Add(text, fault.Code, fault.Detail);
    }

    private void CheckMember(object value, MemberShape member, string pointer)
    {
        switch (value)
        {
            case string text when text.Length < member.Least:
                Faults.Add(pointer, FaultCode.Empty, "May not be empty.");
                break;
            case decimal or int or long when member.Range is { } range:
                CheckNumber(Convert.ToDecimal(value, CultureInfo.InvariantCulture), range, pointer);
                break;
            case IEnumerable items and not string:
                CheckItems([.. items.Cast<object>()], member, pointer);
                break;
            default:
                CheckChild(value, pointer);
                break;
        }
    }

    private void CheckItems(List<object> items, MemberShape member, string pointer)
    {
        if (items.Count < member.Least)
            Faults.Add(pointer, FaultCode.Empty, member.Least == 1 ? "May not be empty." : $"Must have at least {member.Least} entries, but has {items.Count}.");
        else if (items.Count > member.Most)
        {
            TooMany = true;
            Faults.Add(pointer, FaultCode.TooMany, $"Must have at most {member.Most} entries, but has {items.Count}.");
        }
        else
        {
            for (var i = 0; i < items.Count; i++)
                CheckItem(items[i], member, JsonPointer.Item(pointer, i));
        }
    }

    private void CheckItem(object item, MemberShape member, string pointer)
    {
        if (item is decimal or int or long && member.Range is { } range)
            CheckNumber(Convert.ToDecimal(item, CultureInfo.InvariantCulture), range, pointer);
        else
            CheckChild(item, pointer);
    }

    private void CheckChild(object value, string pointer)
    {
        var type = WireJson.Options.GetTypeInfo(value.GetType());
        if (type.Kind == JsonTypeInfoKind.Object)
            CheckObject(value, type, pointer);
    }

    private void CheckNumber(decimal value, RangeAttribute range, string pointer)
    {
        var (lowest, highest) = (ToDecimal(range.Minimum), ToDecimal(range.Maximum));
        if (value < lowest || (range.MinimumIsExclusive && value == lowest))
            Faults.Add(
                pointer,
                lowest == 0 && range.MinimumIsExclusive ? FaultCode.MustBePositive : FaultCode.TooSmall,
                $"Must be {(range.MinimumIsExclusive ? "greater than" : "at least")} {Shown(lowest)}, but is {Shown(value)}.");
        else if (value > highest || (range.MaximumIsExclusive && value == highest))
            Faults.Add(
                pointer,
                FaultCode.TooLarge,
                $"Must be {(range.MaximumIsExclusive ? "less than" : "at most")} {Shown(highest)}, but is {Shown(value)}.");
        else if (range is QuantityRangeAttribute quantity && value % quantity.Grid(unit) != 0)
            Faults.Add(pointer, FaultCode.TooFine, $"Must be a multiple of {Shown(quantity.Grid(unit))}, but is {Shown(value)}.");
    }

    private static decimal ToDecimal(object bound) => Convert.ToDecimal(bound, CultureInfo.InvariantCulture);

    private static string Shown(decimal value) => ShortestDecimalConverter.Text(value);
}
