using System.Globalization;

namespace SawEngine.Core.CuttingData;

/// <summary>Sentences with figures, the same in every culture.</summary>
internal static class Text
{
    public static string Of(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
