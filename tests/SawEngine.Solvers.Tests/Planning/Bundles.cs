using SawEngine.Core.Planning;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;
using static SawEngine.Solvers.Tests.Planning.Workshop;

namespace SawEngine.Solvers.Tests.Planning;

/// <summary>One saw that clamps bundles, and equal bars for it.</summary>
internal static class Bundles
{
    /// <summary>Six bars of a flat of 50 x 10, 6 m long, cut into five pieces of 1.1 m each; three lie side by side and two on one another.</summary>
    public static PlanProblem Flats(BundleCapacity? clamped = null) => Of(clamped, Line("SO-1", "10", "Flat 50x10", "S235JR", 1_100, 30));

    /// <summary>The same saw and bars for another line.</summary>
    public static PlanProblem Of(BundleCapacity? clamped, Core.Orders.OrderLine line)
    {
        var workshop = Problem(Order("SO-1", line));
        var saw = workshop.Saws[1];
        return workshop with
        {
            Stock = [Bar("B", line.Section!.Designation, line.Grade!.Designation, 6_000, 8, 20m)],
            Saws = [saw with { Saw = saw.Saw with { Bundle = clamped ?? new(3, 2) { HoldDown = true }, MiterRange = new(Angle.FromDegrees(45), Angle.FromDegrees(45)) } }],
        };
    }
}
