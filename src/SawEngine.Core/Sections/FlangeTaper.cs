namespace SawEngine.Core.Sections;

/// <summary>Thickness of a channel's flange in mm at its toe and at the face of the web; equal where the flanges are parallel.</summary>
internal readonly record struct FlangeTaper(double AtToe, double AtWeb)
{
    public static FlangeTaper Of(SectionDimensions d)
    {
        var slope = (double)(d.FlangeSlope ?? 0);
        var width = d.Width!.Value.ApproximateMillimeters;
        var measuredAt = d.FlangeAt?.ApproximateMillimeters ?? width / 2;
        var atToe = d.Flange!.Value.ApproximateMillimeters - slope * measuredAt;
        return new(atToe, atToe + slope * (width - d.Web!.Value.ApproximateMillimeters));
    }
}
