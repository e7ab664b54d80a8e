using SawEngine.Core.Grades;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Cautions;

/// <summary>Which cautions a piece of work carries.</summary>
public static class CautionRules
{
    /// <summary>Cautions of every cut on a saw: faces, guard, blade change, and mist where there is coolant.</summary>
    public static IReadOnlyList<Caution> ForSaw(Saw saw)
    {
        List<CautionKind> kinds = [CautionCatalog.HotSharpPiece, CautionCatalog.BladeGuard, CautionCatalog.BladeChangeLockout];
        if (saw.Coolant)
            kinds.Add(CautionCatalog.CoolantMist);
        return [.. kinds.Select(kind => Caution.Of(kind))];
    }

    /// <summary>
    /// Cautions of a grade on a saw, in the catalog's order. Chromium dust counts only where the grade is cut dry, water in magnesium only with coolant;
    /// a grade that may not be cut with coolant says so on a saw that has it.
    /// </summary>
    public static IReadOnlyList<Caution> ForGrade(Grade grade, Saw saw)
    {
        var kinds = KindsOf(grade).Where(kind => Applies(kind, isWet: saw.Coolant && grade.Coolant == CoolantUse.Allowed));
        if (saw.Coolant && grade.Coolant == CoolantUse.NotAllowed)
            kinds = kinds.Append(CautionCatalog.CoolantNotAllowed);
        return [.. kinds.Select(kind => Caution.Of(kind))];
    }

    /// <summary>The caution of coated stock; null for bare stock.</summary>
    public static Caution? ForCoating(Coating coating) => coating switch
    {
        Coating.Zinc => Caution.Of(CautionCatalog.ZincCoating),
        Coating.Paint => Caution.Of(CautionCatalog.PaintedStock),
        _ => null,
    };

    /// <summary>The lifting caution of a bar, bundle, piece or remainder; null where one person lifts it.</summary>
    /// <param name="what">What is lifted, as it starts a sentence.</param>
    /// <param name="mass">Its mass.</param>
    /// <param name="limits">The limits; the default ones where null.</param>
    public static Caution? ForLift(string what, Mass mass, LiftLimits? limits = null)
    {
        limits ??= LiftLimits.Default;
        if (mass <= limits.TwoPersons)
            return null;
        var kind = mass > limits.Crane ? CautionCatalog.CraneLift : CautionCatalog.LiftTwoPersons;
        return Caution.Of(kind, what, mass.Kilograms);
    }

    /// <summary>The caution of a piece shorter than it is high; null for any other.</summary>
    public static Caution? ForShortPiece(Length length, Section section) => length < section.Height
        ? Caution.Of(CautionCatalog.ShortPieceTips, length.Millimeters, section.Height.Millimeters)
        : null;

    /// <summary>The caution of a cut bundle; none for one bar.</summary>
    public static IReadOnlyList<Caution> ForBundle(CutBundle bundle) =>
        bundle.IsSingle ? [] : [Caution.Of(CautionCatalog.CutBundle, bundle.Bars, $"{bundle.Wide} wide and {bundle.High} high")];

    /// <summary>Whether a grade may never be cut unattended, whatever an override says.</summary>
    public static bool IsAttendedOnly(Grade grade) => KindsOf(grade).Any(kind => kind.AttendedOnly);

    private static IEnumerable<CautionKind> KindsOf(Grade grade) =>
        CautionCatalog.Items.Where(kind => grade.CautionCodes.Contains(kind.Code, StringComparer.Ordinal));

    private static bool Applies(CautionKind kind, bool isWet) =>
        (kind != CautionCatalog.ChromiumDust || !isWet) && (kind != CautionCatalog.MagnesiumWaterCoolant || isWet);
}
