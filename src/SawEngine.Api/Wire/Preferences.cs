using System.Globalization;

namespace SawEngine.Api.Wire;

/// <summary>What the caller prefers (RFC 7240).</summary>
/// <param name="Lenient">Unknown members become warnings (<c>handling=lenient</c>).</param>
/// <param name="WaitSeconds">Seconds for the calculation where the request states no limit (<c>wait=N</c>).</param>
public sealed record Preferences(bool Lenient, int? WaitSeconds)
{
    /// <summary>No preferences.</summary>
    public static readonly Preferences None = new(false, null);

    /// <summary>Reads the header; what is not understood is ignored, as the RFC asks, and the first of equal preferences counts.</summary>
    public static Preferences Parse(IEnumerable<string?> headers)
    {
        bool? lenient = null;
        int? wait = null;
        foreach (var preference in headers.SelectMany(header => (header ?? "").Split(',')))
        {
            var (name, value) = Parts(preference);
            if (name == "handling")
                lenient ??= string.Equals(value, "lenient", StringComparison.OrdinalIgnoreCase);
            else if (name == "wait" && ushort.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var seconds))
                wait ??= seconds;
        }
        return new(lenient ?? false, wait);
    }

    private static (string Name, string Value) Parts(string preference)
    {
        var parts = preference.Split(';')[0].Split('=', 2);
        return (parts[0].Trim().ToLowerInvariant(), parts.Length == 2 ? parts[1].Trim().Trim('"') : "");
    }
}
