namespace SawEngine.Core.Sections;

/// <summary>A corner of a contour before it is rounded.</summary>
/// <param name="At">Where the straight edges would meet.</param>
/// <param name="Radius">Radius that rounds it, in mm; 0 leaves it sharp.</param>
/// <param name="Member">The member of the dimensions that gave the radius.</param>
internal readonly record struct Corner(Point At, double Radius = 0, string Member = "")
{
    public Corner(double x, double y, double radius = 0, string member = "")
        : this(new Point(x, y), radius, member)
    {
    }
}
