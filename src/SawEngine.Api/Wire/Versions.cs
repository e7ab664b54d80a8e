using System.Globalization;

namespace SawEngine.Api.Wire;

/// <summary>The versions that every answer names.</summary>
public static class Versions
{
    /// <summary>Major version of the schema; requests of another one are refused.</summary>
    public const int SchemaMajor = 1;

    /// <summary>Version of the request and answer schema.</summary>
    public const string Schema = "1.0";

    /// <summary>Version of the reference data: month of the last review.</summary>
    public const string Data = "2026-11";

    /// <summary>Version of the engine.</summary>
    public static readonly string Engine = typeof(Versions).Assembly.GetName().Version!.ToString(3);

    /// <summary>Whether requests of a schema version are read: any minor version of the same major one.</summary>
    public static bool IsRead(string version) =>
        version.Split('.') is [var major, var minor]
        && major == SchemaMajor.ToString(CultureInfo.InvariantCulture)
        && minor.Length is > 0 and <= 4
        && minor.All(char.IsAsciiDigit);
}
