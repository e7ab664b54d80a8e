using SawEngine.Core.Orders;
using SawEngine.Core.Sections;
using SawEngine.Core.Stock;

namespace SawEngine.Core.Nesting;

/// <summary>Holds the cut bundle of one layout against the rules that it must keep. Lengths are nanometers.</summary>
internal sealed class BundleCheck(CutRules rules, StockItem stock, BarLayout layout, ViolationText text)
{
    /// <summary>What floating point may lose, in nanometers.</summary>
    private const double Noise = 2;

    private readonly int _wide = layout.Bundle.Wide;
    private readonly int _high = layout.Bundle.High;
    private readonly List<EndCut> _faces = [.. layout.Cuts.SelectMany(cut => new[] { cut.StartCut, cut.EndCut })];

    /// <summary>The rules broken, each with what breaks it.</summary>
    public IEnumerable<(string Code, string What)> Run()
    {
        if (_wide == 1 && _high == 1 && layout.Bundle.Bars == 1)
            return [];
        return _wide < 1 || _high < 1 || layout.Bundle.Bars != (long)_wide * _high || layout.Bundle.Bars > layout.Repeat
            ? [(NestRule.BundleSize, $"{layout.Bundle.Bars} bars {_wide} wide and {_high} high, of {layout.Repeat}")]
            : [.. Size(), .. Weight(), .. HoldDown(), .. Shape(), .. Miters(), .. Heats()];
    }

    private IEnumerable<(string, string)> Size()
    {
        if (rules.Bundle is not { } clamped || _wide > clamped.MostWide || _high > clamped.MostHigh)
            yield return (NestRule.BundleTooLarge, $"a bundle {_wide} wide and {_high} high, more than is clamped");
        else if (stock.Section is { } section && !Fits(section.Width.Nanometers, section.Height.Nanometers, onSide: false)
            && (section.Shape == SectionShape.Hexagon || !Fits(section.Height.Nanometers, section.Width.Nanometers, onSide: true)))
            yield return (NestRule.BundleTooLarge, $"a bundle of {section.Designation} {_wide} wide and {_high} high");
    }

    /// <summary>Whether the bars fit side by side and on top of one another as they lie, the blade swiveled to every face.</summary>
    private bool Fits(long width, long height, bool onSide)
    {
        var mostWidth = Math.Min(rules.Bundle!.LargestWidth?.Nanometers ?? long.MaxValue, rules.Capacity?.Width.Nanometers ?? long.MaxValue);
        var mostHeight = Math.Min(rules.Bundle.LargestHeight?.Nanometers ?? long.MaxValue, rules.Capacity?.Height.Nanometers ?? long.MaxValue);
        return (double)height * _high <= mostHeight && _faces.TrueForAll(face =>
        {
            var (along, across) = onSide ? (face.HeightAngle, face.WidthAngle) : (face.WidthAngle, face.HeightAngle);
            return across.Millidegrees == 0 && (double)width * _wide / FaceTrigonometry.Cosine(along.Millidegrees) <= mostWidth + Noise;
        });
    }

    private IEnumerable<(string, string)> Weight()
    {
        if (rules.LoadLimit is not { } limit || stock.Section is not { } section || stock.Grade is not { } grade)
            yield break;
        var kilograms = grade.Density.Value.KilogramsPerCubicMeter * section.Area.SquareMillimeters * stock.Length.Nanometers / 1e15m * _wide * _high;
        if (kilograms > limit.Kilograms)
            yield return (NestRule.BundleTooHeavy, $"a bundle of {kilograms:0.###} kg");
    }

    private IEnumerable<(string, string)> HoldDown()
    {
        var rolls = stock.Section?.Shape is SectionShape.Round or SectionShape.RoundTube or SectionShape.Pipe or SectionShape.Hexagon;
        if (rules.Bundle is { HoldDown: false } && (_high > 1 || rolls))
            yield return (NestRule.BundleHoldDown, $"a bundle {_wide} wide and {_high} high without a hold-down");
    }

    private IEnumerable<(string, string)> Shape()
    {
        var isSafe = stock.Section?.Shape switch
        {
            SectionShape.Angle or SectionShape.Tee or SectionShape.Custom => false,
            // On its corners a hexagon does not lie.
            SectionShape.Hexagon => _high == 1 && _faces.TrueForAll(face => face.HeightAngle.Millidegrees == 0),
            SectionShape.Round or SectionShape.RoundTube or SectionShape.Pipe or SectionShape.Channel or SectionShape.IBeam => _high == 1,
            _ => true,
        };
        if (!isSafe)
            yield return (NestRule.BundleSection, $"{stock.Section!.Designation} {_wide} wide and {_high} high");
    }

    /// <summary>Side by side the bars are staggered by what one face reaches along the bar.</summary>
    private IEnumerable<(string, string)> Miters()
    {
        if (_wide == 1 || _faces.TrueForAll(face => face.IsSquare))
            yield break;
        if (_faces.Exists(face => face != _faces[0]) || _faces[0].IsCompound || stock.Section is not { } section)
        {
            yield return (NestRule.BundleMiter, $"bars {_wide} wide with unlike faces");
            yield break;
        }
        var corners = FaceTrigonometry.OffsetsAtCorners(_faces[0], section);
        var needed = rules.Tail.Nanometers + (_wide - 1) * (corners.Max() - corners.Min());
        if (rules.Tail.Nanometers > 0 && layout.Remainder.Length.Nanometers < needed - Noise)
            yield return (NestRule.BundleMiter, $"bars {_wide} wide, staggered, with a remainder of {text.Length(layout.Remainder.Length.Nanometers)} where {text.Length((decimal)Math.Round(needed, 0, MidpointRounding.ToEven))} is needed");
    }

    private IEnumerable<(string, string)> Heats()
    {
        if (stock.Heat is null && stock.Certificate != Certificate.None)
            yield return (NestRule.BundleHeats, "certified bars of unknown heats cut together");
    }
}
