using SawEngine.Core.Grades;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Saws;

namespace SawEngine.Core.Tests.CuttingData;

/// <summary>A saw, blades and grades to test with.</summary>
internal static class Shop
{
    public static Saw Saw(decimal fastest = 120m, decimal slowest = 15m, decimal motor = 4m, decimal capacity = 410m)
    {
        var size = Length.FromMillimeters(capacity);
        var limits = new SawCapacity(size, size, size);
        var defaults = SawDefaults.For(limits);
        return new()
        {
            SawId = "saw",
            Capacity = limits,
            MiterRange = new(Angle.FromDegrees(45), Angle.FromDegrees(60)),
            SlowestBladeSpeed = new(slowest),
            FastestBladeSpeed = new(fastest),
            MotorPowerKilowatts = motor,
            DriveEfficiency = defaults.DriveEfficiency,
            FastestBladeFeedMillimetersPerMinute = defaults.FastestBladeFeedMillimetersPerMinute,
            BarFeedStroke = defaults.BarFeedStroke,
            LoadLimit = defaults.LoadLimit,
            Tail = Length.FromMillimeters(100),
            Blades = [],
            Accuracy = defaults.Accuracy,
            Times = defaults.Times,
        };
    }

    public static Blade Blade(decimal coarsest, decimal finest, decimal kerf = 1.75m, ToothMaterial teeth = ToothMaterial.Bimetal) => new()
    {
        BladeId = $"34x1.1-{coarsest}/{finest}",
        Width = Length.FromMillimeters(34m),
        Thickness = Length.FromMillimeters(1.1m),
        Kerf = Length.FromMillimeters(kerf),
        CoarsestTeethPerInch = coarsest,
        FinestTeethPerInch = finest,
        ToothMaterial = teeth,
    };

    public static Grade Grade(string designation) => GradeCatalog.Standard.Find(designation)!;

    public static EndCut Swivel(decimal degrees) => new(Angle.Zero, Angle.FromDegrees(degrees));
}
