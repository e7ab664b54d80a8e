using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;

namespace SawEngine.Core.Tests.Orders;

/// <summary>
/// Area of a compound miter over that of the section, by hand. End angles a and b in the planes of the section: sqrt(1 + tan² a + tan² b). A saw that swivels by a
/// and then tilts by b: 1/(cos a cos b); its face has tan a in the plane of the width and tan b / cos a in that of the height (plane geometry).
/// </summary>
public sealed class CompoundMiterAreaTests
{
    [Theory]
    [InlineData(45, 45, 1.732051)]
    [InlineData(30, 45, 1.527525)]
    [InlineData(30, 30, 1.290994)]
    [InlineData(-45, 45, 1.732051)]
    [InlineData(45, 0, 1.414214)]
    [InlineData(0, 0, 1)]
    public void Compound_miter_area_by_end_angles_in_the_section_planes(int width, int height, double factor) =>
        Assert.Equal(factor, new EndCut(Angle.FromDegrees(height), Angle.FromDegrees(width)).AlongBar, 1e-6);

    [Theory]
    [InlineData(45, 45, 2.0)]
    [InlineData(30, 45, 1.632993)]
    [InlineData(30, 30, 1.333333)]
    [InlineData(0, 60, 2.0)]
    [InlineData(45, 0, 1.414214)]
    public void Compound_miter_area_by_swivel_then_tilt(int swivel, int tilt, double factor)
    {
        var (a, b) = (swivel * Math.PI / 180, tilt * Math.PI / 180);
        Assert.Equal(factor, 1 / (Math.Cos(a) * Math.Cos(b)), 1e-6);
        var inHeight = (decimal)Math.Round(Math.Atan(Math.Tan(b) / Math.Cos(a)) * 180 / Math.PI, 3);
        // Angles are whole thousandths of a degree, so the face is that of the saw to about 1e-4.
        Assert.Equal(factor, new EndCut(Angle.FromDegrees(inHeight), Angle.FromDegrees(swivel)).AlongBar, 1e-4);
    }
}
