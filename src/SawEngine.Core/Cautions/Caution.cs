using System.Globalization;

namespace SawEngine.Core.Cautions;

/// <summary>Something that could hurt someone, said where it is caused.</summary>
/// <param name="Code">The stable snake_case code.</param>
/// <param name="Detail">What to heed; it defers to the machine's manual, local codes and trained people.</param>
/// <param name="Reference">The regulation or standard that covers it.</param>
/// <param name="Confidence">How far the reference can be trusted.</param>
public sealed record Caution(string Code, string Detail, string Reference, Confidence Confidence)
{
    /// <summary>The last word of every caution.</summary>
    public const string Deferral = "The machine's manual, local codes and trained people decide.";

    /// <summary>A case of a kind of caution, its figures written in the invariant culture.</summary>
    public static Caution Of(CautionKind kind, params object[] arguments) => new(
        kind.Code,
        string.Format(CultureInfo.InvariantCulture, kind.Template, arguments) + " " + Deferral,
        kind.Reference,
        kind.Confidence);
}
