namespace SawEngine.Core.Sections;

/// <summary>A point of an outline in mm: x from the left, y the depth below the top.</summary>
internal readonly record struct Point(double X, double Y)
{
    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y);

    public static Point operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);

    public static Point operator *(double factor, Point a) => new(factor * a.X, factor * a.Y);

    public double Norm => double.Hypot(X, Y);

    /// <summary>The direction a quarter turn onward, from x to y.</summary>
    public Point Quarter => new(-Y, X);

    public double Dot(Point other) => X * other.X + Y * other.Y;

    public double Cross(Point other) => X * other.Y - Y * other.X;
}
