using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>Faults of a section that is stated by its contact widths.</summary>
internal static class ContactWidthFaults
{
    private const int FewestWidths = 2;
    private const int MostWidths = 500;
    private const int MostRuns = 100;

    public static IReadOnlyList<SectionFault> Of(SectionDimensions d)
    {
        List<SectionFault> faults = [.. OfList(d.ContactWidths!, "contactWidths", d.Width!.Value, "width")];
        if (faults.Count == 0 && d.ContactWidthsTurned is { } turned)
            faults.AddRange(OfTurned(turned, d));
        if (faults.Count == 0)
            faults.AddRange(OfAreas(d));
        return faults;
    }

    private static List<SectionFault> OfTurned(IReadOnlyList<ContactWidth> turned, SectionDimensions d)
    {
        const string member = "contactWidthsTurned";
        var faults = OfList(turned, member, d.ContactWidths![^1].Depth, "height").ToList();
        if (faults.Count == 0 && turned[^1].Depth != d.Width)
            faults.Add(new($"{member}[{turned.Count - 1}].depth", "extent_disagrees", "Turned a quarter, a section is as high as it was wide: the last depth must be the width."));
        return faults;
    }

    private static IEnumerable<SectionFault> OfList(IReadOnlyList<ContactWidth> widths, string member, Length across, string acrossName)
    {
        if (widths.Count < FewestWidths)
            yield return new(member, "too_few_points", "Contact widths are stated at 2 depths at least.");
        else if (widths.Count > MostWidths)
            yield return new(member, "too_many_points", "Contact widths are stated at 500 depths at most.");
        else
        {
            for (var i = 0; i < widths.Count; i++)
            {
                if (DepthFault(widths, i) is { } depth)
                    yield return new($"{member}[{i}].depth", depth.Code, depth.Detail);
                if (widths[i].Width < Length.Zero)
                    yield return new($"{member}[{i}].width", "must_not_be_negative", "A contact width must not be less than zero.");
                else if (widths[i].Width > across)
                    yield return new($"{member}[{i}].width", "too_large", $"The contact width is more than the {acrossName} of the section.");
                else if (widths[i].Runs > 1 && widths[i].Width == across)
                    yield return new($"{member}[{i}].runs", "too_large", $"Material as wide as the {acrossName} of the section is one run.");
                if (widths[i].Runs is < 1 or > MostRuns)
                    yield return new($"{member}[{i}].runs", widths[i].Runs < 1 ? "too_small" : "too_large", "A contact width consists of 1 to 100 runs.");
            }
        }
    }

    private static (string Code, string Detail)? DepthFault(IReadOnlyList<ContactWidth> widths, int i)
    {
        if (i == 0)
            return widths[0].Depth == Length.Zero ? null : ("depths_not_ascending", "The first depth is that of the top, 0.");
        if (widths[i].Depth < widths[i - 1].Depth)
            return ("depths_not_ascending", "Depths run from top to bottom.");
        if (i > 1 && widths[i].Depth == widths[i - 2].Depth)
            return ("depths_not_ascending", "At one depth there are two contact widths at most, above and below a step.");
        if (widths[i].Depth > ShapeMembers.Largest)
            return ("too_large", "A depth is more than 10 m.");
        return i == widths.Count - 1 && widths[i].Depth < ShapeMembers.Smallest ? ("too_small", "The section is less than 0.001 mm high.") : null;
    }

    private static IEnumerable<SectionFault> OfAreas(SectionDimensions d)
    {
        var integral = ContactProfile.AreaOf(d.ContactWidths!);
        if (integral < ProfileSection.SmallestAreaMm2)
            yield return new("contactWidths", "too_small", "The contact widths add up to an area of less than 0.000001 mm2.");
        else if (d.AreaMm2 <= 0)
            yield return new("areaMm2", "must_be_positive", "areaMm2 must be more than zero.");
        else if (d.AreaMm2 is { } stated && !Agree(integral, stated))
            yield return new("areaMm2", "area_disagrees", FormattableString.Invariant($"The contact widths add up to {integral:0.###} mm2, which is more than 1 % off."));
        else if (d.ContactWidthsTurned is { } turned && ContactProfile.AreaOf(turned) is var ofTurned && !Agree(ofTurned, d.AreaMm2 ?? integral))
            yield return new("contactWidthsTurned", "area_disagrees", FormattableString.Invariant($"They add up to {ofTurned:0.###} mm2, which is more than 1 % off the {d.AreaMm2 ?? integral:0.###} mm2 of the section."));
    }

    private static bool Agree(decimal integral, decimal area) => Math.Abs(integral - area) <= ProfileSection.AreaTolerance * area;
}
