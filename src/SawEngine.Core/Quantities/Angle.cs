using System.Globalization;

namespace SawEngine.Core.Quantities;

/// <summary>A plane angle in thousandths of a degree. The sign is the hand of a miter (see <c>Orders.EndCut</c>).</summary>
/// <param name="Millidegrees">Thousandths of a degree.</param>
public readonly record struct Angle(int Millidegrees)
{
    /// <summary>No angle: a square cut in this plane.</summary>
    public static readonly Angle Zero;

    /// <summary>The angle in degrees, exact.</summary>
    public decimal Degrees => Millidegrees / 1000m;

    /// <summary>The size of the angle without its hand.</summary>
    public Angle Size => new(Math.Abs(Millidegrees));

    /// <summary>The tangent, for geometry in floating point.</summary>
    internal double Tangent => Math.Tan(Radians);

    /// <summary>The angle in radians.</summary>
    internal double Radians => Millidegrees * Math.PI / 180_000;

    /// <summary>An angle in degrees. Throws <see cref="ArgumentException"/> where it is finer than a thousandth of a degree.</summary>
    public static Angle FromDegrees(decimal degrees)
    {
        var millidegrees = degrees * 1000m;
        return decimal.Truncate(millidegrees) == millidegrees
            ? new((int)millidegrees)
            : throw new ArgumentException("The angle is finer than a thousandth of a degree.", nameof(degrees));
    }

    /// <summary>Degrees, invariant culture, for diagnostics.</summary>
    public override string ToString() => Degrees.ToString("0.###", CultureInfo.InvariantCulture) + " deg";
}
