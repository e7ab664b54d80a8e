using SawEngine.Core.Quantities;

namespace SawEngine.Core.Sections;

/// <summary>
/// A custom section by its area and its contact widths. Its outline is unknown, so that no symmetry is taken for granted, and how it is cut turned a quarter
/// is known only where the contact widths for that are stated, too. Its area is the stated one, else the integral of the contact widths, which agrees within 1 %.
/// </summary>
public sealed class ProfileSection : Section
{
    /// <summary>How far the contact widths may add up to another area than the stated one, as a share of it. Own choice.</summary>
    public const decimal AreaTolerance = 0.01m;

    internal const decimal SmallestAreaMm2 = 0.000001m;

    private readonly ContactProfile _profile;
    private readonly ProfileSection? _turned;

    private ProfileSection(ContactProfile profile, Length height, Length width, Area area, Func<ProfileSection, ProfileSection?> turned)
    {
        (_profile, Height, Width, Area) = (profile, height, width, area);
        _turned = turned(this);
    }

    /// <inheritdoc/>
    public override Length Height { get; }

    /// <inheritdoc/>
    public override Length Width { get; }

    /// <inheritdoc/>
    public override Area Area { get; }

    internal override bool HasOutline => false;

    internal override bool CanTurn => _turned is not null;

    internal override IReadOnlyList<double> Breakpoints => _profile.Breakpoints;

    /// <summary>The section of these dimensions, whose contact widths are given, or null with every fault found: of members first, of the contact widths where the members are right.</summary>
    public static new ProfileSection? Create(SectionDimensions dimensions, out IReadOnlyList<SectionFault> faults)
    {
        faults = [.. ShapeMembers.Faults(dimensions)];
        if (faults.Count == 0)
            faults = ContactWidthFaults.Of(dimensions);
        return faults.Count > 0 ? null : Of(dimensions);
    }

    internal override IReadOnlyList<(double Start, double End)> RunsAt(double depthMillimeters) => _profile.RunsAt(depthMillimeters);

    /// <summary>Turned twice it is the section as it came.</summary>
    internal override Section Turned() => _turned ?? throw new InvalidOperationException($"Section {Designation} lies only as it comes.");

    private static ProfileSection Of(SectionDimensions d)
    {
        var (height, width) = (d.ContactWidths![^1].Depth, d.Width!.Value);
        var area = new Area(decimal.Round(d.AreaMm2 ?? ContactProfile.AreaOf(d.ContactWidths), 6, MidpointRounding.ToEven));
        return Made(new(d.ContactWidths, width), height, width, asItComes =>
            d.ContactWidthsTurned is { } turned ? Made(new(turned, height), width, height, _ => asItComes) : null);

        ProfileSection Made(ContactProfile profile, Length high, Length wide, Func<ProfileSection, ProfileSection?> other) => new(profile, high, wide, area, other)
        {
            Designation = d.Designation,
            Shape = d.Shape,
            Source = "the request",
            Confidence = Confidence.Caller,
        };
    }
}
