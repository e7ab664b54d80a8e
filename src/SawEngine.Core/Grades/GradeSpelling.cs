using System.Text.RegularExpressions;

namespace SawEngine.Core.Grades;

/// <summary>
/// How designations of grades are compared: case, blanks, hyphens, the words grade and class, and what stands in parentheses make no difference. What is not found so is tried without what
/// only says what the grade is anyway: the standard (<c>AISI 304</c>), that it is stainless (<c>304 SS</c>) or carbon steel (<c>C1018</c>), the temper of aluminum
/// that it has (<c>6061-T651</c>), a condition of delivery that does not harden it (<c>S355J2+N</c>).
/// </summary>
internal static partial class GradeSpelling
{
    /// <summary>A standard, that something is stainless and a condition: nobody writes more at once.</summary>
    private const int MostOmissions = 3;

    private static readonly (Func<Regex> Pattern, Func<Grade, Match, bool> Fits)[] s_omissions =
    [
        (Standard, (_, _) => true),
        (Stainless, (grade, _) => grade.Group.StartsWith("stainless", StringComparison.Ordinal)),
        (StainlessBehind, (grade, _) => grade.Group.StartsWith("stainless", StringComparison.Ordinal)),
        (CarbonSteel, (_, _) => true),
        (Aluminum, (grade, _) => IsAluminum(grade)),
        (Temper, (grade, match) => IsAluminum(grade) && AreAlike(grade.Condition, match.Groups["temper"].Value)),
        (Delivery, (_, _) => true),
    ];

    /// <summary>A designation in the form in which designations are compared.</summary>
    public static string FormOf(string designation) => GradeOrClass().Replace(Ignored().Replace(designation.ToUpperInvariant().Replace("GR.", "GR", StringComparison.Ordinal), ""), "");

    /// <summary>What a form may mean, the form itself first, each with which grades of that form it can be.</summary>
    public static IEnumerable<(string Form, Func<Grade, bool> Fits)> ReadingsOf(string form)
    {
        List<(string Form, Func<Grade, bool> Fits)> readings = [(form, _ => true)];
        for (int omitted = 0, from = 0; omitted <= MostOmissions; omitted++)
        {
            var to = readings.Count;
            for (; from < to; from++)
            {
                yield return readings[from];
                readings.AddRange(Shortened(readings[from].Form, readings[from].Fits));
            }
        }
    }

    private static IEnumerable<(string Form, Func<Grade, bool> Fits)> Shortened(string form, Func<Grade, bool> fitsSoFar)
    {
        foreach (var (pattern, fits) in s_omissions)
        {
            var match = pattern().Match(form);
            if (match.Success)
                yield return (match.Groups["rest"].Value, grade => fitsSoFar(grade) && fits(grade, match));
        }
    }

    private static bool IsAluminum(Grade grade) => grade.Group == "aluminum alloy";

    /// <summary>T651 is T6 relieved of stress by stretching: what one says, the other says more closely.</summary>
    private static bool AreAlike(string condition, string temper) =>
        condition.StartsWith(temper, StringComparison.Ordinal) || temper.StartsWith(condition, StringComparison.Ordinal);

    [GeneratedRegex(@"\s*\([^)]*\)|[\s_-]+", RegexOptions.CultureInvariant)]
    private static partial Regex Ignored();

    [GeneratedRegex(@"(?<=[0-9])(GR(ADE)?|CL(ASS|\.)?)(?=[0-9A-Z])", RegexOptions.CultureInvariant)]
    private static partial Regex GradeOrClass();

    [GeneratedRegex(@"^(AISI|SAE|UNS|ASTM|EN|DIN|W\.?NR\.?|TYPE)(?<rest>.+)$", RegexOptions.CultureInvariant)]
    private static partial Regex Standard();

    [GeneratedRegex(@"^(SS|STAINLESS(STEEL)?|T)(?<rest>[0-9].*)$", RegexOptions.CultureInvariant)]
    private static partial Regex Stainless();

    [GeneratedRegex(@"^(?<rest>[0-9].*?)(SS|STAINLESS(STEEL)?)$", RegexOptions.CultureInvariant)]
    private static partial Regex StainlessBehind();

    [GeneratedRegex(@"^C(?<rest>1[0-9]L?[0-9]{2})$", RegexOptions.CultureInvariant)]
    private static partial Regex CarbonSteel();

    [GeneratedRegex(@"^(AA|AL|ALUMIN(I?)UM)(?<rest>[0-9].*)$", RegexOptions.CultureInvariant)]
    private static partial Regex Aluminum();

    [GeneratedRegex(@"^(?<rest>.+?)(?<temper>T[0-9]{1,4})$", RegexOptions.CultureInvariant)]
    private static partial Regex Temper();

    [GeneratedRegex(@"^(?<rest>.+)\+(N|AR|M|A|AT|U|SH)$", RegexOptions.CultureInvariant)]
    private static partial Regex Delivery();
}
