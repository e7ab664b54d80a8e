using SawEngine.Core;
using SawEngine.Core.Grades;
using SawEngine.Core.Orders;
using SawEngine.Core.Quantities;
using SawEngine.Core.Stock;

namespace SawEngine.Tests.Nesting;

/// <summary>Short ways to write problems down.</summary>
internal static class Some
{
    public static Length Mm(decimal millimeters) => Length.FromMillimeters(millimeters);

    public static Length In(decimal inches) => Length.FromInches(inches);

    public static EndCut WidthMiter(decimal degrees) => new(Angle.Zero, Angle.FromDegrees(degrees));

    public static EndCut HeightMiter(decimal degrees) => new(Angle.FromDegrees(degrees), Angle.Zero);

    public static OrderLine Line(string lineId, decimal millimeters, int quantity) =>
        new() { Ref = new("", lineId), Length = Mm(millimeters), Quantity = quantity };

    /// <summary>A bar whose length is its cost.</summary>
    public static StockItem Bar(string stockId, decimal millimeters, int? quantity) =>
        new()
        {
            StockId = stockId,
            Kind = quantity is null ? StockKind.Purchasable : StockKind.Bar,
            Length = Mm(millimeters),
            Quantity = quantity,
            CostMicros = Mm(millimeters).Nanometers,
        };

    public static Grade Steel(string designation) =>
        new()
        {
            Designation = designation,
            Designations = [designation],
            Group = "structuralSteel",
            Condition = "as rolled",
            LowestHardnessHb = 140,
            HighestHardnessHb = 190,
            Density = Stated(new Density(7850)),
            ReferenceBladeSpeed = Stated(new Speed(80)),
            ReferenceCuttingRate = Stated(new CuttingRate(60)),
            UnitPowerKilowattsPerCm3PerMinute = Stated(0.04m),
            BladeLifeSquareMeters = Stated(6m),
        };

    private static Sourced<T> Stated<T>(T value) => new(value, "stated by the test", Confidence.Caller);
}
